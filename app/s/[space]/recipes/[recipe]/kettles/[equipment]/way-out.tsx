import type { WayOut } from "@/lib/calc/adapt";
import type { Ledger, Recipe } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { AmountsTable } from "./amounts-table";
import { ComparisonTable } from "./comparison-table";
import { PlanForm, type PlanFormProps } from "./plan-form";
import { wayWords } from "./way-words";

interface WayOutSectionProps {
  readonly way: WayOut;
  readonly name: string;
  readonly rank: number;
  readonly written: { readonly recipe: Recipe; readonly ledger: Ledger };
  readonly preferences: Preferences;
  /** null for a reader who may not plan a brew on this kettle. */
  readonly plan: PlanFormProps | null;
}

/** One way out: what it changes, and the button that takes it. */
export function WayOutSection({ way, name, rank, written, preferences, plan }: WayOutSectionProps) {
  const words = wayWords(way, preferences);
  const headingId = `way-${rank}`;
  return (
    <section aria-labelledby={headingId} className="border-t border-line py-4">
      <div className="flex flex-wrap items-start justify-between gap-x-6 gap-y-2">
        <h3 id={headingId}>
          {rank}. {words}
        </h3>
        {plan === null ? null : <PlanForm {...plan} way={name} words="Brew it this way" about={words} />}
      </div>
      <details open={rank === 1}>
        <summary className="cursor-pointer py-2">What it changes</summary>
        <div className="grid items-start gap-x-12 gap-y-6 lg:grid-cols-2">
          <ComparisonTable
            caption={way.times === 1 ? "Numbers" : "Numbers of each brew"}
            written={written.ledger}
            here={way.ledger}
            preferences={preferences}
          />
          <AmountsTable
            caption={way.times === 1 ? "Amounts" : "Amounts for each brew"}
            written={written.recipe}
            here={way.recipe}
            preferences={preferences}
          />
        </div>
      </details>
    </section>
  );
}
