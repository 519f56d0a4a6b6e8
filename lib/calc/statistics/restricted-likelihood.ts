import { CONSTANT, type FactorProducts, LEVELS, VALUES } from "./factor-products";

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
  const { weighed, logDeterminant } = weigh(data, factors, rest);
  const at = (i: number, j: number): number => weighed[i]?.[j] ?? 0;
  const constant = at(CONSTANT, CONSTANT);
  // What is left of the products once the mean is taken out.
  const left = (i: number, j: number): number => at(i, j) - (at(i, CONSTANT) * at(CONSTANT, j)) / constant;

  const starts = data.levels.map((_, f) => LEVELS + data.levels.slice(0, f).reduce((sum, count) => sum + count, 0));
  const places = data.levels.map((count, f) => Array.from({ length: count }, (_, i) => (starts[f] ?? 0) + i));
  const sum = (list: readonly number[], f: (i: number) => number): number => list.reduce((total, i) => total + f(i), 0);
  const traces = places.map((own) => sum(own, (i) => left(i, i)));
  const explained = places.map((own) => sum(own, (i) => left(i, VALUES) ** 2));
  const crossed = places.map((own) => places.map((other) => sum(own, (i) => sum(other, (j) => left(i, j) ** 2))));

  // The same of the rest follow, because the variances weighed by them add up to what is known.
  const scatter = left(VALUES, VALUES);
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
    mean: at(CONSTANT, VALUES) / constant,
    meanVariance: 1 / constant,
  };
}

// A′V⁻¹A from A′A, with V = rest I + Z G Z′: by Woodbury's identity only a matrix in the size of the levels is factored.
function weigh(
  { n, products, levels }: FactorProducts,
  factors: readonly number[],
  rest: number,
): { readonly weighed: readonly Float64Array[]; readonly logDeterminant: number } {
  const roots = levels.flatMap((count, f) => Array.from({ length: count }, () => Math.sqrt(factors[f] ?? 0)));
  const product = (i: number, j: number): number => products[i]?.[j] ?? 0;
  const lower: Float64Array[] = [];
  const solved: Float64Array[] = [];
  let logDeterminant = (n - roots.length) * Math.log(rest);
  roots.forEach((root, i) => {
    const row = new Float64Array(i + 1);
    for (let j = 0; j <= i; j++) {
      let entry = root * product(LEVELS + i, LEVELS + j) * (roots[j] ?? 0) + (i === j ? rest : 0);
      const other = lower[j] ?? row;
      for (let k = 0; k < j; k++) entry -= (row[k] ?? 0) * (other[k] ?? 0);
      row[j] = i === j ? Math.sqrt(entry) : entry / (other[j] ?? 1);
    }
    lower.push(row);
    const diagonal = row[i] ?? 1;
    logDeterminant += 2 * Math.log(diagonal);
    solved.push(
      Float64Array.from(products, (_, column) => {
        let entry = root * product(LEVELS + i, column);
        for (let k = 0; k < i; k++) entry -= (row[k] ?? 0) * (solved[k]?.[column] ?? 0);
        return entry / diagonal;
      }),
    );
  });
  const weighed = products.map((line, i) => {
    const out = Float64Array.from(line);
    for (const row of solved)
      for (let j = 0; j < out.length; j++) out[j] = (out[j] ?? 0) - (row[i] ?? 0) * (row[j] ?? 0);
    return out.map((entry) => entry / rest);
  });
  return { weighed, logDeterminant };
}
