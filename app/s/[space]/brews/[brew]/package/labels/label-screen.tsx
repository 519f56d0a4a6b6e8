"use client";

import { useState } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "@/lib/ui/format-quantity";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { BottleLabel } from "./bottle-label";
import { labelCount, LabelFields, type LabelDraft } from "./label-fields";

interface LabelScreenProps {
  readonly beer: string;
  readonly brewer: string;
  readonly packagedAt: Date;
  readonly alcohol: { readonly value: number; readonly isMeasured: boolean } | null;
  readonly allergens: string;
  readonly count: number | null;
  /** Where this service is reached; null takes the address of the page. */
  readonly origin: string | null;
  readonly path: string;
  readonly preferences: Preferences;
}

const USUAL_COUNT = 24;
const DAY = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });

/** What stands on the labels, how large they are, and the labels themselves. */
export function LabelScreen({ alcohol, packagedAt, brewer, origin, path, preferences, ...known }: LabelScreenProps) {
  const [draft, setDraft] = useState<LabelDraft>({
    size: "roll",
    count: String(known.count ?? USUAL_COUNT),
    beer: known.beer,
    allergens: known.allergens,
  });
  const isHydrated = useHydrated();
  const many = labelCount(draft);
  const shown = alcohol === null ? null : formatQuantity({ ...alcohol, dimension: "alcohol", preferences });
  return (
    <>
      <section aria-labelledby="labels" className="no-print my-6 flex max-w-2xl flex-col gap-4">
        <h2 id="labels">Labels</h2>
        <LabelFields draft={draft} type={(change) => setDraft({ ...draft, ...change })} />
        <p className="text-sm text-muted">
          {alcohol === null ? "No alcohol is known yet, so none is printed." : alcoholWords(alcohol.isMeasured)} Beer
          that is given away or sold is labelled by the law of the place, which asks for more than this.
        </p>
        <div>
          <button
            type="button"
            className="button"
            disabled={!isHydrated || many === null}
            onClick={() => window.print()}
          >
            Print {many ?? ""} labels
          </button>
        </div>
        <h3>One of them</h3>
      </section>
      <div className={`labels labels-${draft.size}`}>
        {Array.from({ length: many ?? 1 }, (_, i) => (
          <BottleLabel
            key={i}
            {...{ beer: draft.beer, allergens: draft.allergens, brewer }}
            packaged={DAY.format(packagedAt)}
            alcohol={shown === null ? null : `${shown.text} ${shown.unit}`}
            address={(origin ?? (isHydrated ? window.location.origin : "")) + path}
          />
        ))}
      </div>
    </>
  );
}

function alcoholWords(isMeasured: boolean): string {
  return isMeasured
    ? "The alcohol is computed from the original extract and the last gravity."
    : "The alcohol is the planned one: no gravity was read in the fermenter.";
}
