import type { ChosenRecipe } from "@/lib/model/adaptation";
import type { Preferences } from "@/lib/model/preferences";
import { toldWay } from "@/lib/ui/kettles/kettle-figures";
import { wayInShort } from "@/lib/ui/kettles/way-words";
import { AdaptedLedger } from "./adapted-ledger";
import { AmountsTable } from "./amounts-table";
import { ComparisonTable } from "./comparison-table";
import { LimitList } from "./limit-list";
import { PlanForm, type PlanFormProps } from "./plan-form";
import type { Sheet } from "./read-sheet";

interface FitsSectionProps {
  readonly sheet: Sheet;
  readonly chosen: ChosenRecipe;
  readonly plan: PlanFormProps | null;
  readonly preferences: Preferences;
}

/** A recipe that fits, as intended or by the way out that was chosen: what differs, the limits, and the whole ledger. */
export function FitsSection({ sheet, chosen, plan, preferences }: FitsSectionProps) {
  const { revision, profile, writtenLedger } = sheet;
  const { recipe, ledger, way } = chosen;
  const words = way === null ? "It fits" : `It fits with ${wayInShort(toldWay(way), preferences)}`;
  const times = way?.times ?? 1;
  return (
    <>
      <div className="my-6 flex flex-wrap items-center justify-between gap-4">
        <h2>{words}</h2>
        {plan === null ? null : <PlanForm {...plan} way="" words="Plan this brew" about={profile.equipment.name} />}
      </div>
      <LimitList limits={ledger.limits} preferences={preferences} />
      <h2 className="mt-8 mb-2">Against the recipe as written</h2>
      <div className="grid items-start gap-x-12 gap-y-6 lg:grid-cols-2">
        <ComparisonTable
          caption={times === 1 ? "Numbers" : "Numbers of each brew"}
          written={writtenLedger}
          here={ledger}
          preferences={preferences}
        />
        <AmountsTable
          caption={times === 1 ? "Amounts" : "Amounts for each brew"}
          written={revision.content.recipe}
          here={recipe}
          preferences={preferences}
        />
      </div>
      <AdaptedLedger {...{ revision, profile, recipe, preferences }} />
    </>
  );
}
