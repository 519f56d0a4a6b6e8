import { reconcile, type NextReading } from "@/lib/calc/compare";
import { OutOfRangeError } from "@/lib/calc/errors";
import type { BrewPlan } from "./brew-plan";
import { currentReadings } from "./current-readings";
import type { Reading } from "./reading";

/**
 * The one reading more that would decide most of what is still open, while it can be taken.
 *
 * Before anything is read the sheet's own list says enough, and nothing is asked.
 *
 * @param openSteps - Steps that are not over; what they ask to measure can still be measured.
 */
export function nextReadingOf(
  plan: BrewPlan | null,
  readings: readonly Reading[],
  openSteps: readonly { readonly measure: readonly string[] }[],
): NextReading | null {
  const counting = [...currentReadings(readings).values()];
  if (plan === null || counting.length === 0) return null;
  const available = openSteps.flatMap(({ measure }) => measure);
  try {
    return reconcile({ ledger: plan.ledger, intervals: plan.intervals, readings: counting, available }).next;
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
