"use client";

import { useState } from "react";
import type { LabelSize } from "@/lib/model/cellar/label";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { BlindLabel } from "./blind-label";
import { BottleTable, type LabelledEntry } from "./bottle-table";
import { LabelChoices, MOST_BOTTLES } from "./label-choices";

interface BlindLabelsProps {
  readonly title: string;
  readonly entries: readonly LabelledEntry[];
  /** Where this service is reached; null takes the address of the page. */
  readonly origin: string | null;
}

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
        <LabelChoices {...{ size, setSize, count, setCount }} isCount={many !== null} />
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
