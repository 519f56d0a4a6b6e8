import { regularisedBeta } from "./regularised-beta";

/**
 * Finds how probable it is that at least so many of n trials succeed.
 *
 * @param a.p - Probability that one succeeds, 0 to 1.
 * @returns Probability, 1 for at least none and 0 for more than n.
 * @source Abramowitz and Stegun 1964, 26.5.24 (docs/sources.md#abramowitz-stegun-1964)
 */
export function binomialUpperTail(a: { readonly n: number; readonly atLeast: number; readonly p: number }): number {
  if (a.atLeast <= 0) return 1;
  return a.atLeast > a.n ? 0 : regularisedBeta(a.p, a.atLeast, a.n - a.atLeast + 1);
}
