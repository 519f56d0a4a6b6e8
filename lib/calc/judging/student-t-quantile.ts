import { findRoot } from "../numerics";
import { fUpperTail } from "./f-upper-tail";

/**
 * Finds the value that Student's t stays below with a probability.
 *
 * @param a.p - Probability, 0.5 to 0.999.
 * @param a.df - Degrees of freedom, at least 1.
 * @returns Quantile, at least 0; its square is one of F with one degree of freedom above.
 * @source Abramowitz and Stegun 1964, 26.7.1 (docs/sources.md#abramowitz-stegun-1964)
 */
export function studentTQuantile({ p, df }: { readonly p: number; readonly df: number }): number {
  const below = (t: number): number => 1 - fUpperTail({ f: t * t, df1: 1, df2: df }) / 2 - p;
  return findRoot({ f: below, low: 0, high: 1000, tolerance: 1e-12 }).x;
}
