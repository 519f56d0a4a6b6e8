import { compareLedger, type LedgerComparison } from "@/lib/calc/compare";
import { OutOfRangeError } from "@/lib/calc/errors";
import type { Reading } from "./reading";
import { currentReadings } from "./current-readings";
import type { BrewPlan } from "./brew-plan";

/** Planned against measured, by the readings that count; null where the library refuses what the log holds. */
export function comparisonOf({ ledger, intervals }: BrewPlan, readings: readonly Reading[]): LedgerComparison | null {
  try {
    return compareLedger({ ledger, intervals, readings: [...currentReadings(readings).values()] });
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
