import { requireInRange } from "../errors";

/** Minutes and °C, by rising minute, with straight lines between. */
export type MashCurve = readonly (readonly [minute: number, celsius: number])[];

export const MASH_CURVE_RANGE = {
  points: { unit: "points", min: 1, max: 1000 },
  minute: { unit: "min", min: 0, max: 2880 },
  celsius: { unit: "°C", min: 0, max: 102 },
} as const;

/**
 * Checks a curve before it is followed.
 *
 * @throws {@link OutOfRangeError} when it has no points, runs back in time or leaves the range.
 */
export function requireMashCurve(curve: MashCurve): void {
  requireInRange("points of the mash curve", curve.length, MASH_CURVE_RANGE.points);
  let earliest: number = MASH_CURVE_RANGE.minute.min;
  for (const [minute, celsius] of curve) {
    requireInRange("minute of the mash curve", minute, { ...MASH_CURVE_RANGE.minute, min: earliest });
    requireInRange("mash temperature", celsius, MASH_CURVE_RANGE.celsius);
    earliest = minute;
  }
}
