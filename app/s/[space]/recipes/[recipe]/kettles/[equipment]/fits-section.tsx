import type { AdaptOutcome } from "@/lib/calc/adapt";
import type { Preferences } from "@/lib/model/preferences";
import { AdaptedLedger } from "./adapted-ledger";
import { AmountsTable } from "./amounts-table";
import { ComparisonTable } from "./comparison-table";
import { LimitList } from "./limit-list";
import { PlanForm, type PlanFormProps } from "./plan-form";
import type { Sheet } from "./read-sheet";

interface FitsSectionProps {
  readonly sheet: Sheet;
  readonly outcome: Extract<AdaptOutcome, { readonly ok: true }>;
  readonly plan: PlanFormProps | null;
  readonly preferences: Preferences;
}

/** A recipe that fits: what differs from the recipe as written, the limits, and the whole ledger. */
export function FitsSection({ sheet, outcome, plan, preferences }: FitsSectionProps) {
  const { revision, profile, writtenLedger } = sheet;
  const { recipe, ledger } = outcome;
  return (
    <>
      <div className="my-6 flex flex-wrap items-center justify-between gap-4">
        <h2>It fits</h2>
        {plan === null ? null : <PlanForm {...plan} way="" words="Plan this brew" about={profile.equipment.name} />}
      </div>
      <LimitList limits={ledger.limits} preferences={preferences} />
      <h2 className="mt-8 mb-2">Against the recipe as written</h2>
      <div className="grid items-start gap-x-12 gap-y-6 lg:grid-cols-2">
        <ComparisonTable caption="Numbers" written={writtenLedger} here={ledger} preferences={preferences} />
        <AmountsTable caption="Amounts" written={revision.content.recipe} here={recipe} preferences={preferences} />
      </div>
      <AdaptedLedger {...{ revision, profile, recipe, preferences }} />
    </>
  );
}
