import { BALANCED_READINGS, type BalancedReading } from "./balance-variables";
import { halfWidth80 } from "./expectation";
import type { ComparedReading, Readings } from "./latest-readings";
import type { Suspect, SuspectInput } from "./suspect";

/** With fewer readings than this in the balances, those check the plan more than the readings. */
const ENOUGH_READINGS = 4;

/** How many half-widths of the 80 % interval no believable reading is away. */
const GROSS = 10;

const BALANCED: ReadonlySet<string> = new Set<BalancedReading>(BALANCED_READINGS);

/**
 * Doubts a reading that no other reading can check, when it is absurdly far from the plan.
 *
 * @returns A suspect, or null where the reading may well be right.
 */
export function planSuspect(a: SuspectInput, { quantity, value, sd }: ComparedReading): Suspect | null {
  const planned = a.ledger.quantities[quantity];
  if (planned === null || (BALANCED.has(quantity) && balancedCount(a.readings) >= ENOUGH_READINGS)) return null;
  if (Math.abs(value - planned) <= GROSS * halfWidth80(a.intervals[quantity] ?? null, sd)) return null;
  const words =
    "More than ten times as far from the plan as four brews in five would be, and no other readings to check it by.";
  return {
    quantity,
    measured: value,
    shouldBe: planned,
    shouldBeSd: null,
    test: "plan",
    z: null,
    alternatives: [],
    words,
  };
}

function balancedCount(readings: Readings): number {
  return [...readings.keys()].filter((quantity) => BALANCED.has(quantity)).length;
}
