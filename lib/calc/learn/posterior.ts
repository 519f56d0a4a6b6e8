import { cholesky, inverse } from "../numerics/cholesky";
import { normalCdf } from "../statistics";
import type { KettlePrior } from "./kettle-prior";
import { product } from "./product";
import type { WeighedBrew } from "./weighed-brew";

/** Figures with all that is known of them, in the prior's units. */
export interface Posterior {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

/**
 * Adds evidence to what was known before.
 *
 * @param weights - How much each piece counts, 0 to 1; left out, each counts whole.
 * @returns Mean and covariance.
 * @source Gelman and others 2013, 3.5, normal data with a normal prior (docs/sources.md#gelman-2013)
 */
export function posterior(prior: KettlePrior, brews: readonly WeighedBrew[], weights?: readonly number[]): Posterior {
  const size = prior.places.length;
  const precision = Float64Array.from(prior.precision);
  const pull = new Float64Array(size);
  brews.forEach((brew, b) => {
    const weight = weights?.[b] ?? 1;
    for (let k = 0; k < precision.length; k++) precision[k] = (precision[k] ?? 0) + weight * (brew.precision[k] ?? 0);
    for (let k = 0; k < size; k++) pull[k] = (pull[k] ?? 0) + weight * (brew.pull[k] ?? 0);
  });
  const covariance = inverse(cholesky(precision, size));
  return { covariance, mean: pull.map((_, i) => product(covariance, i, pull)) };
}

/** From here on a bound cuts nothing off worth counting; and beyond it the curve has no digits left. */
const FAR_FROM_BOUND = 5;

/**
 * Keeps figures within what they can be: what lies beyond a bound is cut off, and the others follow as far as they are tied to it.
 *
 * Mean and variance of the cut distribution take the place of those of the whole, one figure after the other.
 *
 * @returns Mean within all bounds, and covariance.
 * @source Johnson, Kotz and Balakrishnan 1994, 13.10.1, truncated normal (docs/sources.md#johnson-kotz-1994)
 */
export function withinBounds(prior: Pick<KettlePrior, "places" | "centre" | "unit">, whole: Posterior): Posterior {
  const size = prior.places.length;
  const mean = Float64Array.from(whole.mean);
  const covariance = Float64Array.from(whole.covariance);
  prior.places.forEach(({ range }, k) => {
    const variance = covariance[k * size + k] ?? 0;
    const sd = Math.sqrt(variance);
    const deviate = (bound: number): number =>
      ((bound - (prior.centre[k] ?? 0)) / (prior.unit[k] ?? 1) - (mean[k] ?? 0)) / sd;
    const cut = truncated(deviate(range.min), deviate(range.max));
    if (cut === null) return;
    const column = Array.from({ length: size }, (_, i) => covariance[i * size + k] ?? 0);
    column.forEach((one, i) => {
      mean[i] = (mean[i] ?? 0) + (one / sd) * cut.shift;
      column.forEach((other, j) => {
        covariance[i * size + j] = (covariance[i * size + j] ?? 0) - ((one * other) / variance) * (1 - cut.left);
      });
    });
  });
  return { mean, covariance };
}

/** Shift of the mean, in standard deviations, and the share of the variance that is left; null where no bound is near. */
function truncated(low: number, high: number): { readonly shift: number; readonly left: number } | null {
  if (low < -FAR_FROM_BOUND && high > FAR_FROM_BOUND) return null;
  // Evidence that is all beyond a bound puts the figure there.
  if (low > FAR_FROM_BOUND) return { shift: low, left: 1 / low ** 2 };
  if (high < -FAR_FROM_BOUND) return { shift: high, left: 1 / high ** 2 };
  const [from, to] = [Math.max(low, -FAR_FROM_BOUND), Math.min(high, FAR_FROM_BOUND)];
  const inside = normalCdf(to) - normalCdf(from);
  const shift = (density(from) - density(to)) / inside;
  return { shift, left: 1 + (from * density(from) - to * density(to)) / inside - shift ** 2 };
}

const density = (x: number): number => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI);
