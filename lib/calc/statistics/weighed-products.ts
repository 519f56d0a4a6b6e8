import type { FactorProducts } from "./factor-products";

export interface WeighedProducts {
  /** A′V⁻¹A of the constant, the values and the levels, row after row. */
  readonly weighed: Float64Array;
  /** ln |V|. */
  readonly logDeterminant: number;
}

/**
 * Weighs sums of products by the inverse of the covariance V = rest I + Z G Z′, one level after the other.
 *
 * A level z with variance g changes the inverse by the one rank of Sherman and Morrison's identity, so nothing in the size of the
 * observations is ever made. Two levels of one factor share no observation: taken first, those of the factor with the most levels
 * leave each other alone, and only the few others are worked through all of them.
 *
 * @param data - Sums of products.
 * @param variances - Of each factor, at least 0, and last of the rest, above 0.
 * @returns Products and the logarithm of the determinant.
 * @source Searle, Casella and McCulloch 1992, section 6.6 (docs/sources.md#searle-1992)
 */
export function weighedProducts(data: FactorProducts, variances: readonly number[]): WeighedProducts {
  const { n, size, levels, starts } = data;
  const rest = variances.at(-1) ?? 1;
  const weighed = new Float64Array(data.products);
  for (let at = 0; at < weighed.length; at++) weighed[at] = (weighed[at] ?? 0) / rest;
  let logDeterminant = n * Math.log(rest);
  const take = (level: number, variance: number, touched: Int32Array): void => {
    logDeterminant += Math.log1p(variance * (weighed[level * size + level] ?? 0));
    takeIn(weighed, size, level, variance, touched);
  };

  const every = Int32Array.from({ length: size }, (_, place) => place);
  const widest = levels.indexOf(Math.max(...levels));
  const [from, to] = spanOf(data, widest);
  const others = every.filter((place) => place < from || place >= to);
  levels
    .map((_, f) => f)
    .sort((a, b) => Number(b === widest) - Number(a === widest))
    .forEach((f) => {
      const variance = variances[f] ?? 0;
      if (variance === 0) return;
      const [first, end] = [starts[f] ?? 0, (starts[f] ?? 0) + (levels[f] ?? 0)];
      for (let level = first; level < end; level++) {
        take(level, variance, f === widest ? Int32Array.of(level, ...others) : every);
      }
    });
  return { weighed, logDeterminant };
}

function spanOf({ starts, levels }: FactorProducts, f: number): readonly [from: number, to: number] {
  const from = starts[f] ?? 0;
  return [from, from + (levels[f] ?? 0)];
}

function takeIn(weighed: Float64Array, size: number, level: number, variance: number, touched: Int32Array): void {
  const start = level * size;
  const shrink = 1 / (1 + variance * (weighed[start + level] ?? 0));
  for (const i of touched) {
    // The level's own row and column are only shrunk, which loses no digits.
    if (i === level) continue;
    const times = variance * shrink * (weighed[start + i] ?? 0);
    if (times === 0) continue;
    const row = i * size;
    for (const j of touched) {
      if (j !== level) weighed[row + j] = (weighed[row + j] ?? 0) - times * (weighed[start + j] ?? 0);
    }
  }
  for (const j of touched) {
    const entry = shrink * (weighed[start + j] ?? 0);
    weighed[start + j] = entry;
    weighed[j * size + level] = entry;
  }
}
