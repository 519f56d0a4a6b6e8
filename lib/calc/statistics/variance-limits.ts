import { findRoot } from "../numerics";
import { chiSquaredQuantile } from "./chi-squared-quantile";
import type { FactorProducts } from "./factor-products";
import { LEAST_REST, type Likeliest, likeliestVariances } from "./likeliest-variances";

/** Fall of twice the log likelihood that an 80 % interval allows, as a deviate. */
const ALLOWED = Math.sqrt(chiSquaredQuantile({ p: 0.8, df: 1 }));
/** Values have a variance of 1; one of a factor past this is not looked for. */
const FARTHEST = 1e6;
/** Rise of the log likelihood that is left unfound where one variance is held: moves a limit in its sixth digit. */
const SETTLED = 1e-6;
/** Of the logarithm of a limit: four digits and a half. */
const TOLERANCE = 3e-5;
/** First step away from the estimate, in the logarithm, where its error is as large as itself. */
const LONGEST_STEP = 1.5;

/**
 * Finds the span of one variance that the likelihood does not contradict with 80 %, the others free.
 *
 * The root of the fall of the likelihood grows nearly straight with the logarithm of the variance, along which it is searched.
 *
 * @param best - The likeliest variances.
 * @param place - Which of them.
 * @param standardError - Of that variance; says how far away to look first.
 * @returns Limits; 0 below where no variance at all is not contradicted either, and null above where no end is found.
 * @source Searle, Casella and McCulloch 1992, section 8.3 (docs/sources.md#searle-1992)
 */
export function varianceLimits(
  data: FactorProducts,
  best: Likeliest,
  place: number,
  standardError: number,
): { readonly low: number; readonly high: number | null } {
  const isRest = place === best.variances.length - 1;
  const estimate = best.variances[place] ?? 0;
  const error = Math.max(LEAST_REST, standardError);
  const least = isRest ? LEAST_REST : 0;
  // The variance of a factor may be 0, which has no logarithm.
  const shift = isRest ? 0 : error / 10;
  const toLine = (variance: number): number => Math.log(variance + shift);
  const ofLine = (x: number): number => Math.max(least, Math.exp(x) - shift);

  const excess = excessAlong(data, best, place, ofLine);
  const centre = toLine(estimate);
  const step = Math.min(LONGEST_STEP, (ALLOWED * error) / (estimate + shift));
  const low = endOf(excess, centre, -step, toLine(least));
  const high = endOf(excess, centre, step, toLine(FARTHEST));
  return { low: low === null ? least : ofLine(low), high: high === null ? null : ofLine(high) };
}

// How far the likelihood has fallen past what is allowed, as a deviate.
function excessAlong(
  data: FactorProducts,
  best: Likeliest,
  place: number,
  ofLine: (x: number) => number,
): (x: number) => number {
  let from = best.variances;
  const known = new Map<number, number>();
  return (x) => {
    const before = known.get(x);
    if (before !== undefined) return before;
    const start = from.map((variance, i) => (i === place ? ofLine(x) : variance));
    const there = likeliestVariances(data, start, place, SETTLED);
    from = there.variances;
    const fall = Math.max(0, 2 * (best.logLikelihood - there.logLikelihood));
    const found = Math.sqrt(fall) - ALLOWED;
    known.set(x, found);
    return found;
  };
}

// Steps away until the fall is past what is allowed, then looks between the last two; null where the bound allows it still.
function endOf(excess: (x: number) => number, centre: number, step: number, bound: number): number | null {
  let inner = centre;
  for (let by = step; ; by *= 2) {
    const outer = step < 0 ? Math.max(bound, centre + by) : Math.min(bound, centre + by);
    if (excess(outer) > 0) {
      const [low, high] = step < 0 ? [outer, inner] : [inner, outer];
      return findRoot({ f: excess, low, high, tolerance: TOLERANCE }).x;
    }
    if (outer === bound) return null;
    inner = outer;
  }
}
