import { apparentRange } from "../alcohol";
import { requireInRange } from "../errors";
import { degreesPlato, type DegreesPlato } from "../units";
import { curveAt } from "./attenuation-curve";
import { LOGGED_RANGE } from "./fermentation-curve";

export const COURSE_RANGE = {
  rate: { unit: "1/d", min: 0.02, max: 30 },
  middle: { unit: "d", min: -30, max: 200 },
} as const;

/**
 * Gives the apparent extract on a day of a fitted fermentation, to draw its curve.
 *
 * @param a.originalPlato - Original extract, °P.
 * @param a.finalPlato - Final extract of the fit, °P.
 * @param a.ratePerDay - Speed of the fit, 1/day.
 * @param a.middleDay - Middle of the fit, days since pitching.
 * @param a.day - Days since pitching.
 * @returns Apparent extract, °P.
 * @validRange Original extract 1 to 35 °P, 0 to 180 days, rates of 0.02 to 30 a day, middles from −30 to 200 days.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Speers, Rogers and Smith 2003, J. Inst. Brew. 109:229 (docs/sources.md#speers-2003)
 * @example
 * platoOnDay({ originalPlato: degreesPlato(12), finalPlato: degreesPlato(3), ratePerDay: 1.5, middleDay: 2, day: 2 }); // 7.72
 */
export function platoOnDay(a: {
  readonly originalPlato: DegreesPlato;
  readonly finalPlato: DegreesPlato;
  readonly ratePerDay: number;
  readonly middleDay: number;
  readonly day: number;
}): DegreesPlato {
  requireInRange("original extract", a.originalPlato, LOGGED_RANGE.original);
  requireInRange("final extract", a.finalPlato, apparentRange(a.originalPlato));
  requireInRange("rate", a.ratePerDay, COURSE_RANGE.rate);
  requireInRange("middle", a.middleDay, COURSE_RANGE.middle);
  requireInRange("day", a.day, LOGGED_RANGE.day);
  return degreesPlato(curveAt(a.day, a.originalPlato, [a.finalPlato, Math.log(a.ratePerDay), a.middleDay]).plato);
}
