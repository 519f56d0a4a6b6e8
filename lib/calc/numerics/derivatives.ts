export type VectorFunction = (x: readonly number[]) => readonly number[];

export interface Bound {
  readonly min: number;
  readonly max: number;
}

/** Cube root of the rounding of a double: where a central difference errs least. */
const STEP = Number.EPSILON ** (1 / 3);

/**
 * Takes slopes by central differences, on one side only where a bound is near.
 *
 * @param scales - Size of each unknown, in which the step is measured.
 * @returns Rows of slopes, one for each value of the function; or null where a value on the way is not finite.
 */
export function derivatives(
  f: VectorFunction,
  x: readonly number[],
  scales: readonly number[],
  bounds: readonly Bound[],
): number[][] | null {
  const rows: number[][] = f(x).map(() => []);
  for (let j = 0; j < x.length; j++) {
    const centre = x[j] ?? 0;
    const h = STEP * Math.max(Math.abs(centre), 0.1 * (scales[j] ?? 1));
    const upper = Math.min(centre + h, bounds[j]?.max ?? Infinity);
    const lower = Math.max(centre - h, bounds[j]?.min ?? -Infinity);
    const above = f(x.map((value, k) => (k === j ? upper : value)));
    const below = f(x.map((value, k) => (k === j ? lower : value)));
    for (const [i, row] of rows.entries()) {
      const slope = upper > lower ? ((above[i] ?? NaN) - (below[i] ?? NaN)) / (upper - lower) : 0;
      if (!Number.isFinite(slope)) return null;
      row.push(slope);
    }
  }
  return rows;
}
