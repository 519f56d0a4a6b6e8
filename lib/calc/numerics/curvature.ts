import type { Bound, VectorFunction } from "./derivatives";

/** Fourth root of the rounding of a double: where a second difference errs least. */
const STEP = Number.EPSILON ** (1 / 4);

/**
 * Finds how constraints bend, each as heavy as its pull on the minimum.
 *
 * @param multipliers - Pull of each constraint.
 * @param sizes - Size of each unknown, in which the steps are measured.
 * @returns Second derivatives of the weighed sum; zeros where a value on the way is not finite.
 * @source Nocedal and Wright 2006, section 8.1 (docs/sources.md#nocedal-wright-2006)
 */
export function constraintCurvature(
  constraints: VectorFunction,
  multipliers: readonly number[],
  x: readonly number[],
  sizes: readonly number[],
  bounds: readonly Bound[],
): number[][] {
  const steps = x.map((_, j) => STEP * (sizes[j] ?? 1));
  // Two steps to either side have to stay within the bounds, so a point on a bound moves in a little.
  const centre = x.map((value, j) => {
    const { min, max } = bounds[j] ?? { min: -Infinity, max: Infinity };
    return Math.max(min + 2 * (steps[j] ?? 0), Math.min(max - 2 * (steps[j] ?? 0), value));
  });
  const pull = (i: number, up: number, j: number, across: number): number =>
    constraints(
      centre.map((value, k) => value + (k === i ? up * (steps[k] ?? 0) : 0) + (k === j ? across * (steps[k] ?? 0) : 0)),
    ).reduce((sum, value, k) => sum + value * (multipliers[k] ?? 0), 0);
  const bend = x.map(() => x.map(() => 0));
  for (let i = 0; i < x.length; i++) {
    for (let j = 0; j <= i; j++) {
      const difference = pull(i, 1, j, 1) - pull(i, 1, j, -1) - pull(i, -1, j, 1) + pull(i, -1, j, -1);
      const second = difference / (4 * (steps[i] ?? 1) * (steps[j] ?? 1));
      if (!Number.isFinite(second)) continue;
      for (const [row, column] of [
        [i, j],
        [j, i],
      ] as const) {
        const line = bend[row];
        if (line !== undefined) line[column] = second;
      }
    }
  }
  return bend;
}
