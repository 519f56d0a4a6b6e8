import { apparentRange } from "../alcohol";
import { requireInRange } from "../errors";
import { EXTRACT_RANGE } from "../gravity";
import { Z80 } from "../statistics";
import type { DegreesPlato } from "../units";
import { dayWithin, type CurveParameters } from "./attenuation-curve";
import { fitCurve, type CurveFit } from "./fit-curve";
import { solveNormal } from "./normal-equations";

export const LOGGED_RANGE = {
  day: { unit: "d", min: 0, max: 180 },
  plato: EXTRACT_RANGE,
  sd: { unit: "°P", min: 0.005, max: 2 },
  original: { unit: "°P", min: 1, max: 35 },
} as const;

/** A beer is done when it has come this near to its end, °P: what a hydrometer does not show any more. */
export const DONE_WITHIN_PLATO = 0.1;

/** A gravity that was logged during fermentation. */
export interface LoggedGravity {
  /** Days since pitching. */
  readonly day: number;
  readonly plato: DegreesPlato;
  /** Standard uncertainty of the reading, °P. */
  readonly sd: number;
}

export interface FittedFermentation {
  readonly ok: true;
  /** Apparent extract that it is heading for, °P. */
  readonly finalPlato: number;
  readonly finalSd: number;
  /** Speed, 1/day: 0.25 of it is the share of the whole fall in a day at its steepest. */
  readonly ratePerDay: number;
  /** Day on which the logistic has its middle; before the start where there was no lag. */
  readonly middleDay: number;
  /** Day on which the extract comes within 0.1 °P of its end. */
  readonly doneDay: number;
  readonly doneSd: number;
  readonly doneLow80: number;
  readonly doneHigh80: number;
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
}

export type FermentationCurve =
  | FittedFermentation
  | {
      readonly ok: false;
      readonly reason: "too-few-points" | "no-decline" | "not-converged" | "end-not-in-sight";
    };

/**
 * Fits the course of a fermentation to logged gravities and says when it will be done.
 *
 * The logistic of the laboratories, with its upper end where it makes the curve start at the original extract, so that a
 * lag and a start at full speed are one formula. What mash and yeast let expect of the final extract counts as one more
 * reading; early on it is nearly all that is known of the end. Where the points scatter more than their uncertainties say,
 * the results are the less sure.
 *
 * @param a.originalPlato - Original extract, °P, taken as exact.
 * @param a.points - Gravities with days since pitching and standard uncertainty, °P, in any order.
 * @param a.expectedFinal - Predicted final extract and its standard uncertainty, °P; null for the points alone.
 * @returns Final extract and the day it is done, with standard uncertainties and an 80 % interval; or why there is no
 * answer: fewer than three days with readings (four without an expected end), no fall beyond the uncertainty, steps that
 * did not settle, or an end that the points do not show yet.
 * @validRange Original extract 1 to 35 °P, 180 days, uncertainties of 0.005 to 2 °P.
 * @throws {@link OutOfRangeError} when a number is outside its range.
 * @source Speers, Rogers and Smith 2003, J. Inst. Brew. 109:229 (docs/sources.md#speers-2003); Marquardt 1963
 * (docs/sources.md#marquardt-1963)
 * @example
 * fermentationCurve({ originalPlato: degreesPlato(12), points: readings, expectedFinal: { plato: degreesPlato(3), sd: 0.5 } });
 * // { ok: true, finalPlato: 2.9, finalSd: 0.2, doneDay: 6.1, doneSd: 0.4, … }
 */
export function fermentationCurve({
  originalPlato,
  points,
  expectedFinal,
}: {
  readonly originalPlato: DegreesPlato;
  readonly points: readonly LoggedGravity[];
  readonly expectedFinal: { readonly plato: DegreesPlato; readonly sd: number } | null;
}): FermentationCurve {
  requireInRange("original extract", originalPlato, LOGGED_RANGE.original);
  points.forEach(requirePoint);
  if (expectedFinal !== null) {
    requireInRange("expected final extract", expectedFinal.plato, apparentRange(originalPlato));
    requireInRange("uncertainty of the expected extract", expectedFinal.sd, LOGGED_RANGE.sd);
  }
  // On day 0 the curve is what it is, and a reading there says nothing about it.
  const later = points.filter(({ day }) => day > 0);
  const told = new Set(later.map(({ day }) => day)).size + (expectedFinal === null ? 0 : 1);
  if (told < 4) return { ok: false, reason: "too-few-points" };
  if (!later.some(({ plato, sd }) => originalPlato - plato > 3 * sd)) return { ok: false, reason: "no-decline" };
  const fit = fitCurve({ originalPlato, points: later, expectedFinal });
  if (fit === null) return { ok: false, reason: "not-converged" };
  return toResult(originalPlato, fit, later.length + (expectedFinal === null ? 0 : 1) - 3);
}

function requirePoint({ day, plato, sd }: LoggedGravity): void {
  requireInRange("day of the reading", day, LOGGED_RANGE.day);
  requireInRange("logged gravity", plato, LOGGED_RANGE.plato);
  requireInRange("uncertainty of the reading", sd, LOGGED_RANGE.sd);
}

function toResult(originalPlato: number, fit: CurveFit, degreesOfFreedom: number): FermentationCurve {
  const { parameters, chiSquared } = fit;
  const [finalPlato, logRate, middleDay] = parameters;
  const possible = apparentRange(originalPlato);
  const isSeen = finalPlato >= possible.min && finalPlato < originalPlato - DONE_WITHIN_PLATO;
  if (!isSeen) return { ok: false, reason: "end-not-in-sight" };
  // Four readings or more for three parameters: at least one is left over.
  const scatter = Math.max(1, Math.sqrt(chiSquared / degreesOfFreedom));
  const finalSd = spread(fit, [1, 0, 0]);
  const done = dayWithin(DONE_WITHIN_PLATO, originalPlato, parameters);
  const doneSd = spread(fit, done.slopes);
  if (finalSd === null || doneSd === null) return { ok: false, reason: "not-converged" };
  const half = Z80 * scatter * doneSd;
  return {
    ok: true,
    finalPlato,
    finalSd: scatter * finalSd,
    ratePerDay: Math.exp(logRate),
    middleDay,
    doneDay: done.day,
    doneSd: scatter * doneSd,
    doneLow80: Math.max(0, done.day - half),
    doneHigh80: done.day + half,
    chiSquared,
    degreesOfFreedom,
  };
}

/** Standard uncertainty of something that moves with the parameters by these slopes. */
function spread({ information }: CurveFit, slopes: CurveParameters): number | null {
  const solved = solveNormal(information, slopes);
  if (solved === null) return null;
  return Math.sqrt(solved.reduce((sum, part, row) => sum + part * (slopes[row] ?? 0), 0));
}
