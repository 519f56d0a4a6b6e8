import { requireInRange } from "../errors";
import { pointOfTail } from "./point-of-tail";
import { STUDENT_T_RANGE, studentTUpperTail } from "./student-t-upper-tail";

export const T_QUANTILE_RANGE = {
  p: { unit: "", min: 1e-12, max: 1 - 1e-12 },
  df: { ...STUDENT_T_RANGE.df, min: 1 },
} as const;

/**
 * Finds the value that Student's t stays below with a probability.
 *
 * @param a.p - Probability below.
 * @param a.df - Degrees of freedom, not necessarily whole.
 * @returns Quantile, within 1e-10 of its size; negative where p is below a half.
 * @validRange Probabilities from 1e-12 to 1 − 1e-12; degrees of freedom from 1 to a million.
 * @throws {@link OutOfRangeError} when the probability or the degrees of freedom are outside their range.
 * @source Abramowitz and Stegun 1964, 26.7.1 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * studentTQuantile({ p: 0.975, df: 10 }); // 2.228
 */
export function studentTQuantile(a: { readonly p: number; readonly df: number }): number {
  const p = requireInRange("probability", a.p, T_QUANTILE_RANGE.p);
  const df = requireInRange("degrees of freedom", a.df, T_QUANTILE_RANGE.df);
  if (p === 0.5) return 0;
  const t = pointOfTail((x) => studentTUpperTail({ t: x, df }), Math.min(p, 1 - p));
  return p < 0.5 ? -t : t;
}
