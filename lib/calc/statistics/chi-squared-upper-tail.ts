import { OutOfRangeError, requireInRange } from "../errors";
import { upperIncompleteGamma } from "./upper-incomplete-gamma";

export const CHI_SQUARED_RANGE = {
  chiSquared: { unit: "", min: 0, max: 1e6 },
  df: { unit: "", min: 1, max: 10_000 },
} as const;

/**
 * Finds how probable a sum of squares at least this large is by chance alone.
 *
 * @param a.chiSquared - Sum of squares of independent standard normal deviates.
 * @param a.df - Degrees of freedom: how many of them are free.
 * @returns Probability, within 1e-12.
 * @validRange Whole degrees of freedom from 1 to 10 000, sums up to a million.
 * @throws {@link OutOfRangeError} when the sum or the degrees of freedom are outside their range or not whole.
 * @source Abramowitz and Stegun 1964, 26.4.19 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * chiSquaredUpperTail({ chiSquared: 9.488, df: 4 }); // 0.05
 */
export function chiSquaredUpperTail({ chiSquared, df }: { readonly chiSquared: number; readonly df: number }): number {
  requireInRange("chi-squared", chiSquared, CHI_SQUARED_RANGE.chiSquared);
  requireInRange("degrees of freedom", df, CHI_SQUARED_RANGE.df);
  if (!Number.isInteger(df)) throw new OutOfRangeError("degrees of freedom", df, CHI_SQUARED_RANGE.df);
  return Math.min(1, Math.max(0, upperIncompleteGamma(df, chiSquared / 2)));
}
