import { findRoot } from "../numerics";
import { chiSquaredQuantile } from "./chi-squared-quantile";
import type { FactorProducts } from "./factor-products";
import { LEAST_REST, type Likeliest, likeliestVariances } from "./likeliest-variances";

/** Fall of twice the log likelihood that an 80 % interval allows. */
const ALLOWED = chiSquaredQuantile({ p: 0.8, df: 1 });
/** Values have a variance of 1; one of a factor past this is not looked for. */
const FARTHEST = 1e6;

/**
 * Finds the span of one variance that the likelihood does not contradict with 80 %, the others free.
 *
 * @param best - The likeliest variances.
 * @param place - Which of them.
 * @returns Limits; 0 below where no variance at all is not contradicted either, and null above where no end is found.
 * @source Searle, Casella and McCulloch 1992, section 8.3 (docs/sources.md#searle-1992)
 */
export function varianceLimits(
  data: FactorProducts,
  best: Likeliest,
  place: number,
): { readonly low: number; readonly high: number | null } {
  const isRest = place === best.variances.length - 1;
  const estimate = best.variances[place] ?? 0;
  let from = best.variances;
  const excess = (value: number): number => {
    const start = from.map((variance, i) => (i === place ? value : variance));
    const there = likeliestVariances(data, start, place);
    from = there.variances;
    return 2 * (best.logLikelihood - there.logLikelihood) - ALLOWED;
  };
  const least = isRest ? LEAST_REST : 0;
  const low = estimate <= least || excess(least) <= 0 ? least : limit(excess, least, estimate);
  let high = Math.max(2 * estimate, 1e-3);
  while (high < FARTHEST && excess(high) < 0) high *= 4;
  return { low, high: high >= FARTHEST ? null : limit(excess, estimate, high) };
}

const limit = (excess: (value: number) => number, low: number, high: number): number =>
  findRoot({ f: excess, low, high, tolerance: 1e-5 * high }).x;
