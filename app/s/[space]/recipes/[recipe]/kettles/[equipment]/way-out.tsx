import type { WayOut } from "@/lib/calc/adapt";
import type { Ledger, Recipe } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { fixedDigits } from "@/lib/ui/fixed-digits";
import { AmountsTable } from "./amounts-table";
import { ComparisonTable } from "./comparison-table";
import { WayForm } from "../way-form";
import { PlanForm } from "./plan-form";
import type { SheetActions } from "./sheet-actions";
import { toldWay } from "@/lib/ui/kettles/kettle-figures";
import { wayWords } from "@/lib/ui/kettles/way-words";

interface WayOutSectionProps {
  readonly way: WayOut;
  readonly name: string;
  readonly rank: number;
  readonly written: { readonly recipe: Recipe; readonly ledger: Ledger };
  readonly preferences: Preferences;
  readonly actions: SheetActions;
  readonly isOpen: boolean;
}

/** One way out: what it changes, how far it is from the recipe, and the buttons that keep it or brew it at once. */
export function WayOutSection({ way, name, rank, written, preferences, actions, isOpen }: WayOutSectionProps) {
  const { plan, choose } = actions;
  const words = wayWords(toldWay(way), preferences);
  const headingId = `way-${rank}`;
  return (
    <section aria-labelledby={headingId} className="border-t border-line py-4">
      <div className="flex flex-wrap items-start justify-between gap-x-6 gap-y-2">
        <h3 id={headingId}>
          {rank}. {words}
        </h3>
        <div className="flex flex-wrap gap-3">
          {choose === null ? null : choose.entry.kept?.choice.way === name ? (
            <span className="target">Chosen</span>
          ) : (
            <WayForm {...choose} way={name}>
              Choose<span className="sr-only">: {words}</span>
            </WayForm>
          )}
          {plan === null ? null : <PlanForm {...plan} way={name} words="Brew it this way" about={words} />}
        </div>
      </div>
      <p className="text-sm text-muted">Distance from the recipe as written: {fixedDigits(way.distance, 2)}</p>
      <details open={isOpen}>
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
