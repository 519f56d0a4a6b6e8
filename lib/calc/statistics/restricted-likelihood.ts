import { CONSTANT, type FactorProducts, VALUES } from "./factor-products";
import { weighedProducts } from "./weighed-products";

/** What the restricted likelihood of a set of variances says: of each factor in turn, and of the rest last. */
export interface Likelihood {
  readonly logLikelihood: number;
  /** Slopes by each variance. */
  readonly slopes: readonly number[];
  /** Expected curvature. */
  readonly information: readonly (readonly number[])[];
  readonly mean: number;
  readonly meanVariance: number;
}

/**
 * Evaluates the restricted likelihood of variances of crossed or nested random factors, in the size of their levels.
 *
 * @param data - Sums of products.
 * @param variances - Of each factor, at least 0, and last of the rest, above 0.
 * @returns Log likelihood with slopes and expected curvature.
 * @source Searle, Casella and McCulloch 1992, sections 6.6 and 8.3 (docs/sources.md#searle-1992)
 */
export function restrictedLikelihood(data: FactorProducts, variances: readonly number[]): Likelihood {
  const rest = variances.at(-1) ?? 1;
  const factors = variances.slice(0, -1);
  const { weighed, logDeterminant } = weighedProducts(data, variances);
  const constant = weighed[CONSTANT] ?? 0;
  const mean = (weighed[VALUES] ?? 0) / constant;
  // What is left of the products once the mean is taken out.
  takeMeanOut(weighed, data.size);
  const { traces, explained, crossed } = sumsOf(weighed, data);

  // The same of the rest follow, because the variances weighed by them add up to what is known.
  const scatter = weighed[VALUES * data.size + VALUES] ?? 0;
  const share = (values: readonly number[]): number => factors.reduce((total, v, f) => total + v * (values[f] ?? 0), 0);
  const restTrace = (data.n - 1 - share(traces)) / rest;
  const restExplained = (scatter - share(explained)) / rest;
  const restCrossed = traces.map((trace, f) => (trace - share(crossed.map((row) => row[f] ?? 0))) / rest);
  const restSquare = (restTrace - share(restCrossed)) / rest;

  return {
    logLikelihood: -(logDeterminant + Math.log(constant) + scatter) / 2,
    slopes: [...traces.map((trace, f) => ((explained[f] ?? 0) - trace) / 2), (restExplained - restTrace) / 2],
    information: [
      ...crossed.map((row, f) => [...row, restCrossed[f] ?? 0].map((entry) => entry / 2)),
      [...restCrossed, restSquare].map((entry) => entry / 2),
    ],
    mean,
    meanVariance: 1 / constant,
  };
}

function takeMeanOut(weighed: Float64Array, size: number): void {
  const ofConstant = weighed.slice(0, size);
  const constant = ofConstant[CONSTANT] ?? 0;
  for (let i = VALUES; i < size; i++) {
    const times = (ofConstant[i] ?? 0) / constant;
    const row = i * size;
    for (let j = VALUES; j < size; j++) weighed[row + j] = (weighed[row + j] ?? 0) - times * (ofConstant[j] ?? 0);
  }
}

interface Sums {
  readonly traces: readonly number[];
  /** Squared products of the values with the levels of each factor. */
  readonly explained: readonly number[];
  /** Squared products of the levels of two factors. */
  readonly crossed: readonly (readonly number[])[];
}

function sumsOf(left: Float64Array, { size, levels, starts }: FactorProducts): Sums {
  const over = (f: number, add: (place: number) => number): number => {
    const from = starts[f] ?? 0;
    const to = from + (levels[f] ?? 0);
    let total = 0;
    for (let place = from; place < to; place++) total += add(place);
    return total;
  };
  const squares = (row: number, g: number): number => {
    const from = row + (starts[g] ?? 0);
    const to = from + (levels[g] ?? 0);
    let total = 0;
    for (let at = from; at < to; at++) total += (left[at] ?? 0) ** 2;
    return total;
  };
  return {
    traces: levels.map((_, f) => over(f, (i) => left[i * size + i] ?? 0)),
    explained: levels.map((_, f) => squares(VALUES * size, f)),
    crossed: levels.map((_, f) => levels.map((__, g) => over(f, (i) => squares(i * size, g)))),
  };
}
