/** Sums of products of a mean, the values and the levels of factors: all that the variance model needs of the data. */
export interface FactorProducts {
  readonly n: number;
  /** First the constant, then the values, then the levels: row after row, each `size` long. */
  readonly products: Float64Array;
  readonly size: number;
  /** Levels of each factor, in the order in which they stand. */
  readonly levels: readonly number[];
  /** Where the first level of each factor stands. */
  readonly starts: readonly number[];
}

/** Where the constant and the values stand among the products; the levels follow. */
export const CONSTANT = 0;
export const VALUES = 1;
const LEVELS = 2;

/**
 * Sums up values and the levels they belong to.
 *
 * @param values - Values about their mean, in units of their scatter.
 * @param factors - For each factor the name of the level of each value.
 * @returns Sums of products.
 */
export function factorProducts(values: readonly number[], factors: readonly (readonly string[])[]): FactorProducts {
  const places = factors.map((names) => new Map([...new Set(names)].map((name, i) => [name, i])));
  const levels = places.map((place) => place.size);
  const starts = levels.map((_, f) => LEVELS + levels.slice(0, f).reduce((sum, count) => sum + count, 0));
  const size = LEVELS + levels.reduce((sum, count) => sum + count, 0);
  const products = new Float64Array(size * size);
  values.forEach((value, i) => {
    const row = [
      { place: CONSTANT, entry: 1 },
      { place: VALUES, entry: value },
      ...factors.map((names, f) => ({ place: (starts[f] ?? 0) + (places[f]?.get(names[i] ?? "") ?? 0), entry: 1 })),
    ];
    for (const a of row) {
      for (const b of row) {
        const at = a.place * size + b.place;
        products[at] = (products[at] ?? 0) + a.entry * b.entry;
      }
    }
  });
  return { n: values.length, products, size, levels, starts };
}
