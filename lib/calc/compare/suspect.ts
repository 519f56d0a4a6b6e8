import type { Intervals, Ledger } from "../ledger";
import type { Variable } from "./balance-variables";
import type { Readings } from "./latest-readings";
import type { MeasurableQuantity } from "./measurable";
import type { PlannedBrew } from "./planned-brew";

/** A reading that cannot be right, or hardly. */
export interface Suspect {
  readonly quantity: MeasurableQuantity;
  readonly measured: number;
  /** What it should have been, with its standard uncertainty: from the other readings, or else from the plan. */
  readonly shouldBe: number;
  readonly shouldBeSd: number | null;
  /** Which test spoke: the balances over all readings, an order that cannot be, or the distance from the plan. */
  readonly test: "balance" | "order" | "plan";
  /** Adjustment over its standard uncertainty; null where no balance spoke. */
  readonly z: number | null;
  /** Readings that would explain it as well, or nearly. */
  readonly alternatives: readonly MeasurableQuantity[];
  readonly words: string;
}

/** Everything that the tests look at. */
export interface SuspectInput {
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  readonly plan: PlannedBrew;
  readonly readings: Readings;
  readonly variables: readonly Variable[];
}
