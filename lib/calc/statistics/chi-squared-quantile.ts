import { OutOfRangeError, requireInRange } from "../errors";
import { CHI_SQUARED_RANGE } from "./chi-squared-upper-tail";
import { pointOfTail } from "./point-of-tail";
import { upperIncompleteGamma } from "./upper-incomplete-gamma";

export const CHI_SQUARED_QUANTILE_RANGE = { unit: "", min: 1e-6, max: 1 - 1e-12 } as const;

/**
 * Finds the sum of squares that chance stays below with a probability.
 *
 * @param a.p - Probability below.
 * @param a.df - Degrees of freedom, whole.
 * @returns Quantile, within 1e-8 of its size.
 * @validRange Probabilities from 1e-6 to 1 − 1e-12; whole degrees of freedom from 1 to 10 000.
 * @throws {@link OutOfRangeError} when the probability or the degrees of freedom are outside their range or not whole.
 * @source Abramowitz and Stegun 1964, 26.4.19 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * chiSquaredQuantile({ p: 0.95, df: 4 }); // 9.488
 */
export function chiSquaredQuantile(a: { readonly p: number; readonly df: number }): number {
  const p = requireInRange("probability", a.p, CHI_SQUARED_QUANTILE_RANGE);
  const df = requireInRange("degrees of freedom", a.df, CHI_SQUARED_RANGE.df);
  if (!Number.isInteger(df)) throw new OutOfRangeError("degrees of freedom", df, CHI_SQUARED_RANGE.df);
  return pointOfTail((x) => upperIncompleteGamma(df, x / 2), 1 - p);
}
