"use client";

import { useState } from "react";
import { LABEL_SIZES, type LabelSize } from "@/lib/model/cellar/label";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { BlindLabel } from "./blind-label";
import { BottleTable, type LabelledEntry } from "./bottle-table";

interface BlindLabelsProps {
  readonly title: string;
  readonly entries: readonly LabelledEntry[];
  /** Where this service is reached; null takes the address of the page. */
  readonly origin: string | null;
}

const MOST_BOTTLES = 48;

/** Labels to put over whatever a bottle says: its blind code, and the way to the judge's sheet for that code. */
export function BlindLabels({ title, entries, origin }: BlindLabelsProps) {
  const [size, setSize] = useState<LabelSize["id"]>("roll");
  const [count, setCount] = useState("2");
  const isHydrated = useHydrated();
  const typed = /^\d{1,2}$/.test(count.trim()) ? Number(count) : 0;
  const many = typed >= 1 && typed <= MOST_BOTTLES ? typed : null;
  const base = origin ?? (isHydrated ? window.location.origin : "");
  return (
    <>
      <section aria-labelledby="labels" className="no-print my-6 flex max-w-2xl flex-col gap-4">
        <h2 id="labels">Blind labels</h2>
        <p>
          A label says the code and nothing else. Cover crown caps too: a brewer knows an own cap. The list below tells
          which bottle gets which; it is not printed.
        </p>
        <div className="grid gap-4 sm:grid-cols-2">
          <SelectField
            name="label-size"
            label="Size"
            value={size}
            onChange={(event) => setSize(LABEL_SIZES.find(({ id }) => id === event.target.value)?.id ?? "roll")}
            options={LABEL_SIZES.map(({ id, text }) => ({ value: id, text }))}
          />
          <NumberField
            name="label-count"
            label="Bottles of each entry"
            unit=""
            value={count}
            onChange={(event) => setCount(event.target.value)}
            error={
              many === null ? `Bottles “${count}” is not a whole number from 1 to ${String(MOST_BOTTLES)}` : undefined
            }
          />
        </div>
        <div>
          <button
            type="button"
            className="button"
            disabled={!isHydrated || many === null || entries.length === 0}
            onClick={() => window.print()}
          >
            Print {entries.length * (many ?? 1)} labels
          </button>
        </div>
        <h3>Which bottle gets which code</h3>
        <BottleTable entries={entries} />
        {entries.length === 0 ? null : <h3>One of them</h3>}
      </section>
      <div className={`labels labels-${size}`}>
        {entries.flatMap(({ entryNo, path }) =>
          Array.from({ length: many ?? 1 }, (_, i) => (
            <BlindLabel key={`${String(entryNo)}-${String(i)}`} {...{ entryNo, title }} address={base + path} />
          )),
        )}
      </div>
    </>
  );
}
