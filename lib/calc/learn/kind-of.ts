import { cholesky, inverse } from "../numerics/cholesky";
import { betweenUnits, type KindPrior, type PooledUnit, type Weighted } from "../statistics/between-units";
import type { OwnInformation } from "./own-information";
import { TELLING } from "./tells-of";
import { product } from "./product";
import { scattered } from "./weighed-brew";

/** What the kettles together say of their kind, in units of the typical uncertainty. */
export interface Kind {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  /** Mean square of the sd between kettles, for each figure. */
  readonly between: readonly number[];
  readonly spreads: readonly (readonly Weighted[])[];
  readonly counts: readonly KindCount[];
}

export interface KindCount {
  readonly kettles: number;
  readonly brews: number;
}

/** Mean and spread share the typical variance, so that together they are no more and no less. */
const PRIOR: KindPrior = { mean: 0, meanSd: Math.SQRT1_2, betweenScale: Math.SQRT1_2 };
/** The spread of one figure hardly leans on that of another; a third round changes nothing that shows. */
const ROUNDS = 2;

/**
 * Finds the mean of a kind and the spread between its kettles.
 *
 * Given the spreads, the means of all figures together follow from the information of the kettles; given the means, each
 * spread follows from one figure's estimates. Both take turns.
 *
 * @returns Mean with covariance, and the spread of each figure with its uncertainty.
 * @source Gelman and others 2013, chapters 5 and 13.6 (docs/sources.md#gelman-2013)
 */
export function kindOf(kettles: readonly OwnInformation[], size: number): Kind {
  let between: readonly number[] = Array.from({ length: size }, () => PRIOR.betweenScale ** 2);
  let spreads: readonly (readonly Weighted[])[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const { mean } = meanOf(kettles, between);
    const units = kettles.map((own) => unitsOf(own, mean, between));
    spreads = between.map((_, k) =>
      betweenUnits(
        units.flatMap((all) => all[k] ?? []),
        PRIOR,
      ),
    );
    between = spreads.map((nodes) => nodes.reduce((sum, { weight, between: sd }) => sum + weight * sd ** 2, 0));
  }
  const counts = between.map((_, k) => ({
    kettles: kettles.filter(({ brews, trials }) => (brews[k] ?? 0) + (trials[k] ?? 0) > 0).length,
    brews: kettles.reduce((sum, { brews }) => sum + (brews[k] ?? 0), 0),
  }));
  return { ...meanOf(kettles, between), between, spreads, counts };
}

function meanOf(
  kettles: readonly OwnInformation[],
  between: readonly number[],
): { readonly mean: Float64Array; readonly covariance: Float64Array } {
  const size = between.length;
  const spread = between.map(Math.sqrt);
  const precision = new Float64Array(size * size);
  const pull = new Float64Array(size);
  for (let k = 0; k < size; k++) precision[k * size + k] = PRIOR.meanSd ** -2;
  for (const own of kettles) {
    const ofKind = scattered(own.precision, own.pull, spread);
    ofKind.precision.forEach((value, k) => (precision[k] = (precision[k] ?? 0) + value));
    ofKind.pull.forEach((value, k) => (pull[k] = (pull[k] ?? 0) + value));
  }
  const covariance = inverse(cholesky(precision, size));
  return { covariance, mean: pull.map((_, k) => product(covariance, k, pull)) };
}

/** Each figure of a kettle by itself, the others as the kind lets them; null where its brews say next to nothing. */
function unitsOf(own: OwnInformation, mean: Float64Array, between: readonly number[]): (PooledUnit | null)[] {
  const found = drawnTo(own, mean, between);
  const size = between.length;
  return between.map((variance, k) => {
    const precision = 1 / (found.covariance[k * size + k] ?? 1);
    const information = precision - 1 / variance;
    if (!(information > TELLING)) return null;
    const estimate = ((found.mean[k] ?? 0) * precision - (mean[k] ?? 0) / variance) / information;
    return { estimate, standardError: 1 / Math.sqrt(information) };
  });
}

/**
 * Draws the figures of one kettle towards a mean that counts as known.
 *
 * @returns Mean and covariance.
 */
export function drawnTo(
  own: OwnInformation,
  towards: Float64Array,
  between: readonly number[],
): { readonly mean: Float64Array; readonly covariance: Float64Array } {
  const size = between.length;
  const precision = Float64Array.from(own.precision);
  const pull = Float64Array.from(own.pull);
  between.forEach((variance, k) => {
    precision[k * size + k] = (precision[k * size + k] ?? 0) + 1 / variance;
    pull[k] = (pull[k] ?? 0) + (towards[k] ?? 0) / variance;
  });
  const covariance = inverse(cholesky(precision, size));
  return { covariance, mean: pull.map((_, k) => product(covariance, k, pull)) };
}
