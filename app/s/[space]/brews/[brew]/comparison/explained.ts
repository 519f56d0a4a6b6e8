import type { LedgerComparison, QuantityCauses } from "@/lib/calc/compare";
import type { Brew } from "@/lib/model/brew";
import type { Preferences } from "@/lib/model/preferences";

/** Everything an explanation is made from. */
export interface Explained {
  readonly brew: Brew;
  readonly comparison: LedgerComparison;
  readonly causes: readonly QuantityCauses[];
  readonly preferences: Preferences;
}
