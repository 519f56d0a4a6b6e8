import { requireInRange } from "../errors";
import { betaTail } from "./beta-tail";

export const F_RANGE = {
  f: { unit: "", min: 0, max: 1e300 },
  df: { unit: "", min: 0.1, max: 1e6 },
} as const;

/**
 * Finds how probable a ratio of mean squares at least this large is by chance.
 *
 * @param a.f - Ratio of two independent mean squares of equal expectation.
 * @param a.df1 - Degrees of freedom above, not necessarily whole.
 * @param a.df2 - Degrees of freedom below.
 * @returns Probability, within 1e-12 of its size.
 * @validRange Ratios up to 1e300; degrees of freedom from 0.1 to a million.
 * @throws {@link OutOfRangeError} when the ratio or a number of degrees of freedom is outside its range.
 * @source Abramowitz and Stegun 1964, 26.6.2 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * fUpperTail({ f: 3.478, df1: 4, df2: 10 }); // 0.05
 */
export function fUpperTail(a: { readonly f: number; readonly df1: number; readonly df2: number }): number {
  const f = requireInRange("ratio of mean squares", a.f, F_RANGE.f);
  const df1 = requireInRange("degrees of freedom above", a.df1, F_RANGE.df);
  const df2 = requireInRange("degrees of freedom below", a.df2, F_RANGE.df);
  const whole = df2 + df1 * f;
  return betaTail({ x: df2 / whole, rest: (df1 * f) / whole, a: df2 / 2, b: df1 / 2 });
}
