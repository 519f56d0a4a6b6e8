import { requireInRange } from "../errors";
import type { DegreesPlato } from "../units";
import { LOGGED_RANGE, type LoggedGravity } from "./fermentation-curve";

/** Two readings nearer than this say nothing, days. */
export const STABLE_FOR_DAYS = 2;

/** A coarser reading hides what still ferments, °P: a hydrometer shows 0.001, which is 0.25 °P. */
const COARSEST_SD = 0.3;

/** Gas in a kilogram of beer for each °P of apparent extract that goes, g: 0.8192 real, of which Balling's 0.9565/2.0665. */
const CO2_PER_PLATO = 10 * 0.8192 * (0.9565 / 2.0665);

export type StableGravity =
  | {
      readonly ok: true;
      /** Mean of the two readings, °P. */
      readonly plato: number;
      /** Most CO2 in a kilogram of beer, g, that a fall hidden by the instrument would still make in as many days. */
      readonly hiddenCo2G: number;
    }
  | {
      readonly ok: false;
      readonly reason: "too-few-points" | "too-soon" | "too-coarse" | "still-falling" | "rising" | "above-expected";
    };

/**
 * Tells whether gravity has stood still, so that the beer may be packaged.
 *
 * The last reading against the latest one at least two days older: they agree within twice their combined uncertainty,
 * and lie no further above the expected end than that. Beer that still ferments bursts bottles. A stuck fermentation also
 * stands still, so a gravity well above the expected end is no yes; nor does a yes hold after a warm spell, dry hops, fruit
 * or wild yeast.
 *
 * @param a.points - Gravities with days and standard uncertainty, °P, in any order.
 * @param a.expectedFinal - Predicted final extract and its standard uncertainty, °P; null where nothing is known.
 * @returns The gravity and what a fall within the uncertainty could hide; or why it must not be packaged yet.
 * @validRange Days 0 to 180, uncertainties of 0.005 to 2 °P, of which 0.3 at most can say yes.
 * @throws {@link OutOfRangeError} when a number is outside its range.
 * @source Common practice (docs/sources.md#trade-practice); Balling 1865 for the gas (docs/sources.md#balling-1865)
 * @example
 * stableGravity({ points: [{ day: 9, plato: 3.1, sd: 0.1 }, { day: 12, plato: 3, sd: 0.1 }], expectedFinal: null });
 * // { ok: true, plato: 3.05, hiddenCo2G: 1.07 }
 */
export function stableGravity({
  points,
  expectedFinal,
}: {
  readonly points: readonly LoggedGravity[];
  readonly expectedFinal: { readonly plato: DegreesPlato; readonly sd: number } | null;
}): StableGravity {
  for (const { day, plato, sd } of points) {
    requireInRange("day of the reading", day, LOGGED_RANGE.day);
    requireInRange("logged gravity", plato, LOGGED_RANGE.plato);
    requireInRange("uncertainty of the reading", sd, LOGGED_RANGE.sd);
  }
  if (expectedFinal !== null) {
    requireInRange("expected final extract", expectedFinal.plato, LOGGED_RANGE.plato);
    requireInRange("uncertainty of the expected extract", expectedFinal.sd, LOGGED_RANGE.sd);
  }
  const inOrder = [...points].sort((one, other) => one.day - other.day);
  const last = inOrder.at(-1);
  if (last === undefined || inOrder.length < 2) return { ok: false, reason: "too-few-points" };
  const before = inOrder.findLast(({ day }) => last.day - day >= STABLE_FOR_DAYS);
  if (before === undefined) return { ok: false, reason: "too-soon" };
  return compared(before, last, expectedFinal);
}

function compared(
  before: LoggedGravity,
  last: LoggedGravity,
  expectedFinal: { readonly plato: number; readonly sd: number } | null,
): StableGravity {
  if (Math.max(before.sd, last.sd) > COARSEST_SD) return { ok: false, reason: "too-coarse" };
  const fall = before.plato - last.plato;
  const doubt = 2 * Math.hypot(before.sd, last.sd);
  if (fall > doubt) return { ok: false, reason: "still-falling" };
  if (-fall > doubt) return { ok: false, reason: "rising" };
  if (expectedFinal !== null && last.plato - expectedFinal.plato > 2 * Math.hypot(last.sd, expectedFinal.sd)) {
    return { ok: false, reason: "above-expected" };
  }
  return { ok: true, plato: (before.plato + last.plato) / 2, hiddenCo2G: CO2_PER_PLATO * (Math.max(0, fall) + doubt) };
}
