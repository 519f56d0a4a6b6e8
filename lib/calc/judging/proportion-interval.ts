import { findRoot } from "../numerics";
import { binomialUpperTail } from "../statistics";

/**
 * Finds the proportions under which a count this high, or this low, still has a chance of one in ten.
 *
 * @param a.n - Number of trials.
 * @param a.count - How many succeeded.
 * @returns Exact limits that hold the true proportion in at least 80 of 100 cases.
 * @source Clopper and Pearson 1934 (docs/sources.md#clopper-pearson-1934)
 */
export function proportionInterval({ n, count }: { readonly n: number; readonly count: number }): {
  readonly low80: number;
  readonly high80: number;
} {
  return {
    low80: count === 0 ? 0 : proportionOf({ n, atLeast: count }, 0.1),
    high80: count === n ? 1 : proportionOf({ n, atLeast: count + 1 }, 0.9),
  };
}

// The tail rises from 0 to 1 with the proportion, so there is one root.
function proportionOf(tail: { readonly n: number; readonly atLeast: number }, probability: number): number {
  return findRoot({ f: (p) => binomialUpperTail({ ...tail, p }) - probability, low: 0, high: 1, tolerance: 1e-12 }).x;
}
