import {
  compareLedger,
  differenceCauses,
  type LedgerComparison,
  type MeterReading,
  type QuantityCauses,
} from "@/lib/calc/compare";
import { OutOfRangeError } from "@/lib/calc/errors";
import type { Reading } from "./reading";
import { currentReadings } from "./current-readings";
import type { BrewPlan } from "./brew-plan";

/** Planned against measured, by the readings that count; null where the library refuses what the log holds. */
export function comparisonOf(
  { ledger, intervals }: BrewPlan,
  readings: readonly Reading[],
  meter: readonly MeterReading[] = [],
): LedgerComparison | null {
  const counting = [...currentReadings(readings).values()];
  return unlessRefused(() => compareLedger({ ledger, intervals, readings: counting, meter }));
}

/** What made the differences; nothing where the library refuses what the log holds. */
export function causesOf({ ledger, intervals }: BrewPlan, readings: readonly Reading[]): readonly QuantityCauses[] {
  const counting = [...currentReadings(readings).values()];
  return unlessRefused(() => differenceCauses({ ledger, intervals, readings: counting })) ?? [];
}

function unlessRefused<T>(of: () => T): T | null {
  try {
    return of();
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
