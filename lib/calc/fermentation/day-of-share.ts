import { requireInRange } from "../errors";
import { softplus } from "./attenuation-curve";
import { COURSE_RANGE } from "./plato-on-day";

/** The last part of a fall is reached on no day: the curve only comes nearer to its end. */
export const FALLEN_RANGE = { unit: "", min: 0, max: 0.999 } as const;

/**
 * Finds the day on which a fitted fermentation has come through a share of its fall: when to add dry hops, for one.
 *
 * @param a.ratePerDay - Speed of the fit, 1/day.
 * @param a.middleDay - Middle of the fit, days since pitching.
 * @param a.share - Share of the way from the original to the final extract.
 * @returns Days since pitching.
 * @validRange Rates of 0.02 to 30 a day, middles from −30 to 200 days, shares up to 0.999.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Speers, Rogers and Smith 2003, J. Inst. Brew. 109:229, its curve solved for time (docs/sources.md#speers-2003)
 * @example
 * dayOfShare({ ratePerDay: 1.5, middleDay: 2, share: 0.9 }); // 3.5
 */
export function dayOfShare({
  ratePerDay,
  middleDay,
  share,
}: {
  readonly ratePerDay: number;
  readonly middleDay: number;
  readonly share: number;
}): number {
  requireInRange("rate", ratePerDay, COURSE_RANGE.rate);
  requireInRange("middle", middleDay, COURSE_RANGE.middle);
  requireInRange("share of the fall", share, FALLEN_RANGE);
  // (1 + e^(−BM)) / (1 + e^(B (t − M))) = 1 − share, solved for t without overflow.
  const x = softplus(-ratePerDay * middleDay) - Math.log1p(-share);
  return Math.max(0, middleDay + (x + Math.log(-Math.expm1(-x))) / ratePerDay);
}
