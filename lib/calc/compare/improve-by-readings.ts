/** A reading along a tangent: how it changes with each value, and how far it is from what the start would read. */
export interface Tangent {
  readonly slopes: readonly number[];
  readonly sd: number;
  readonly off: number;
}

export type Covariance = readonly (readonly number[])[];

/**
 * Improves uncertain values by readings that depend on them along straight lines, one reading after the other.
 *
 * The order does not matter, and the result is that of least squares over values and readings together.
 *
 * @param covariance - Of the values before any reading.
 * @returns How far the values moved, and their covariance after the readings.
 * @source Kalman 1960, the update by a measurement (docs/sources.md#kalman-1960)
 */
export function improveByReadings(
  covariance: Covariance,
  readings: readonly Tangent[],
): { readonly moved: readonly number[]; readonly covariance: Covariance } {
  let after = covariance;
  let moved = covariance.map(() => 0);
  for (const { slopes, sd, off } of readings) {
    const shared = after.map((row) => dot(row, slopes));
    const variance = dot(shared, slopes) + sd * sd;
    const surprise = off - dot(slopes, moved);
    moved = moved.map((value, i) => value + ((shared[i] ?? 0) * surprise) / variance);
    after = after.map((row, i) => row.map((value, j) => value - ((shared[i] ?? 0) * (shared[j] ?? 0)) / variance));
  }
  return { moved, covariance: after };
}

/**
 * Finds how uncertain a combination of uncertain values is.
 *
 * @returns Standard uncertainty; rounding below nought is nought.
 * @source JCGM 100:2008, law of propagation of uncertainty (docs/sources.md#jcgm-100-2008)
 */
export function sdAlong(slopes: readonly number[], covariance: Covariance): number {
  return Math.sqrt(
    Math.max(
      0,
      dot(
        slopes,
        covariance.map((row) => dot(row, slopes)),
      ),
    ),
  );
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
