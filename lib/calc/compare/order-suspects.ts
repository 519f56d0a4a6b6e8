import { halfWidth80 } from "./expectation";
import { impossibilities } from "./impossible";
import type { ComparedReading } from "./latest-readings";
import type { MeasurableQuantity } from "./measurable";
import type { Suspect, SuspectInput } from "./suspect";

/**
 * Doubts readings that together say what cannot be, where the balances named none of them.
 *
 * Of those involved, the one farthest from its plan is named; the others might be wrong instead.
 *
 * @param named - Readings that are suspect already.
 * @returns One suspect for each impossibility, and no reading twice.
 */
export function orderSuspects(a: SuspectInput, named: readonly MeasurableQuantity[]): Suspect[] {
  const suspects: Suspect[] = [];
  for (const { readings, words } of impossibilities(a.plan, a.readings)) {
    const known = [...named, ...suspects.map(({ quantity }) => quantity)];
    if (readings.some((quantity) => known.includes(quantity))) continue;
    const involved = readings.flatMap((quantity) => a.readings.get(quantity) ?? []);
    const farthest = involved.reduce<ComparedReading | null>(
      (best, each) => (best === null || fromPlan(a, each) > fromPlan(a, best) ? each : best),
      null,
    );
    if (farthest === null) continue;
    const { quantity, value } = farthest;
    const alternatives = involved.map((each) => each.quantity).filter((each) => each !== quantity);
    const shouldBe = a.ledger.quantities[quantity] ?? value;
    suspects.push({
      quantity,
      measured: value,
      shouldBe,
      shouldBeSd: null,
      test: "order",
      z: null,
      alternatives,
      words,
    });
  }
  return suspects;
}

/** How far a reading is from its plan, in half-widths of what 80 % of brews differ. */
function fromPlan({ ledger, intervals }: SuspectInput, { quantity, value, sd }: ComparedReading): number {
  const planned = ledger.quantities[quantity] ?? value;
  return Math.abs(value - planned) / halfWidth80(intervals[quantity] ?? null, sd);
}
