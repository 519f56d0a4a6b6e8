import type { Dimension } from "@/lib/calc/ledger";
import { IONS } from "@/lib/calc/water";
import type { Preferences } from "@/lib/model/preferences";
import { ION_FIELDS } from "@/lib/model/recipe-fields";
import { displayUnit } from "../display-unit";
import { formatDifference } from "../format-difference";
import { formatQuantity } from "../format-quantity";
import type { RowNames } from "./row-labels";
import type { Shown } from "./shown";
import { solveTarget, type SolvedTarget, type Target } from "./solve-target";
import { targetChanges, type TargetChange } from "./target-changes";

/** What meeting a target would change; or why it cannot be met, and what can. */
export type Proposal = MetTarget | { readonly ok: false; readonly message: string };

export interface MetTarget {
  readonly ok: true;
  readonly words: string;
  readonly changes: readonly TargetChange[];
  readonly remarks: readonly string[];
}

export function solvedProposal(
  { target, words }: { readonly target: Target; readonly words: string },
  shown: Shown,
  names: RowNames,
  preferences: Preferences,
): Proposal {
  const solved = solveTarget(target, shown.brewed);
  if (!solved.ok) return { ok: false, message: refusal(solved, preferences) };
  const { recipe } = shown.brewed;
  const changes = targetChanges({
    before: recipe,
    after: solved.recipe,
    keys: shown.keys,
    names,
    preferences,
    solvedFor: words,
  });
  const already = changes.length === 0 ? ["The recipe meets it as it stands; nothing would change."] : [];
  return { ok: true, words: `target ${words}`, changes, remarks: [...residuals(solved, preferences), ...already] };
}

function refusal({ why, reachable }: Extract<SolvedTarget, { readonly ok: false }>, preferences: Preferences): string {
  if (reachable === null) return `${why}.`;
  const { low, high, dimension } = reachable;
  const shown = (value: number): string => inWords(value, dimension, preferences);
  return `${why}. It can reach ${shown(low)} to ${shown(high)}.`;
}

function inWords(value: number, dimension: Dimension, preferences: Preferences): string {
  const { digits } = displayUnit(dimension, preferences);
  const { text, unit } = formatQuantity({ value, dimension, preferences, digits });
  return `${text} ${unit}`;
}

/** What no salts bring this water to. */
function residuals(
  { residual }: Extract<SolvedTarget, { readonly ok: true }>,
  preferences: Preferences,
): readonly string[] {
  const off = IONS.flatMap((ion) => {
    const by = residual[ion];
    if (by === undefined) return [];
    const { text, unit } = formatDifference({ value: by, from: 0, dimension: "concentration", preferences });
    return [`${ION_FIELDS[ion].label} ${text} ${unit}`];
  });
  return off.length === 0 ? [] : [`No salts meet this in full. It stays off by: ${off.join(", ")}.`];
}
