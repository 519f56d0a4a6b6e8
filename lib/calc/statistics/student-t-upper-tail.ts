import { requireInRange } from "../errors";
import { betaTail } from "./beta-tail";

export const STUDENT_T_RANGE = {
  t: { unit: "", min: -1e15, max: 1e15 },
  df: { unit: "", min: 0.5, max: 1e6 },
} as const;

/**
 * Finds how probable a value of Student's t at least this large is by chance.
 *
 * @param a.t - Deviation over its own estimated standard error; may be negative.
 * @param a.df - Degrees of freedom of that error, not necessarily whole.
 * @returns Probability of one side, within 1e-12 of its size where t is positive.
 * @validRange Degrees of freedom from 0.5 to a million.
 * @throws {@link OutOfRangeError} when t or the degrees of freedom are outside their range.
 * @source Abramowitz and Stegun 1964, 26.7.1 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * studentTUpperTail({ t: 2.228, df: 10 }); // 0.025
 */
export function studentTUpperTail(a: { readonly t: number; readonly df: number }): number {
  const t = requireInRange("t", a.t, STUDENT_T_RANGE.t);
  const df = requireInRange("degrees of freedom", a.df, STUDENT_T_RANGE.df);
  const whole = df + t * t;
  const upper = betaTail({ x: df / whole, rest: (t * t) / whole, a: df / 2, b: 0.5 }) / 2;
  return t < 0 ? 1 - upper : upper;
}
