import { regularisedBeta } from "./regularised-beta";

/**
 * Finds how probable a ratio of mean squares at least this large is by chance.
 *
 * @param a.f - Ratio, at least 0.
 * @param a.df1 - Degrees of freedom above, not necessarily whole.
 * @param a.df2 - Degrees of freedom below.
 * @returns Probability.
 * @source Abramowitz and Stegun 1964, 26.6.2 (docs/sources.md#abramowitz-stegun-1964)
 */
export function fUpperTail(a: { readonly f: number; readonly df1: number; readonly df2: number }): number {
  return regularisedBeta(a.df2 / (a.df2 + a.df1 * a.f), a.df2 / 2, a.df1 / 2);
}
