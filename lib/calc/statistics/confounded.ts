import type { FactorProducts } from "./factor-products";
import { restrictedLikelihood } from "./restricted-likelihood";

/** Curvature left below this share of its own says that a variance does nothing of its own. */
const NOTHING = 1e-8;

/**
 * Finds variances that the layout of the data cannot tell apart, whatever the values.
 *
 * @param data - Sums of products.
 * @returns Places of the variances, the rest after the factors; empty where all can be told.
 * @source Searle, Casella and McCulloch 1992, chapter 6 (docs/sources.md#searle-1992)
 */
export function confounded(data: FactorProducts): readonly number[] {
  const { information } = restrictedLikelihood(
    data,
    [...data.levels, 1].map(() => 1),
  );
  const scales = information.map((row, i) => Math.sqrt(row[i] ?? 0));
  const rows: { readonly left: number[]; readonly mix: number[] }[] = [];
  for (const [i, row] of information.entries()) {
    // Each row with the others taken out of it, and how much of each that was.
    const left = row.map((entry, j) => entry / ((scales[i] ?? 1) * (scales[j] ?? 1)));
    const mix: number[] = information.map((_, j) => (i === j ? 1 : 0));
    for (const [k, done] of rows.entries()) {
      const factor = (left[k] ?? 0) / (done.left[k] ?? 1);
      done.left.forEach((entry, j) => (left[j] = (left[j] ?? 0) - factor * entry));
      done.mix.forEach((entry, j) => (mix[j] = (mix[j] ?? 0) - factor * entry));
    }
    if (!((left[i] ?? 0) > NOTHING)) return mix.flatMap((entry, j) => (Math.abs(entry) > 1e-6 ? [j] : []));
    rows.push({ left, mix });
  }
  return [];
}
