import { requireInRange } from "../errors";

/** Values that statistics are taken of: their squares stay far from the largest number a computer holds. */
export const SAMPLE_VALUE_RANGE = { unit: "", min: -1e50, max: 1e50 } as const;

export const SAMPLE_SIZE_MAX = 100_000;

/** A sample measured from its first value, so that leading digits which all values share cost nothing. */
export interface Sample {
  readonly n: number;
  readonly mean: number;
  /** Mean above `origin`. */
  readonly shift: number;
  readonly origin: number;
  /** Sum of squares about the mean. */
  readonly squares: number;
}

/**
 * Refuses a sample that is too small, too large or holds what is not a number.
 *
 * @param quantity - What the values are, for the message of a refusal.
 * @param fewest - Smallest number of values that will do.
 * @throws {@link OutOfRangeError} when there are too few or too many values or one is outside its range.
 */
export function requireSample(quantity: string, values: readonly number[], fewest: number): void {
  requireInRange(`number of ${quantity}s`, values.length, { unit: "", min: fewest, max: SAMPLE_SIZE_MAX });
  for (const value of values) requireInRange(quantity, value, SAMPLE_VALUE_RANGE);
}

/**
 * Takes mean and sum of squares in two passes, with the lost digits of every sum kept.
 *
 * @param origin - What to measure from; the first value unless samples are to be compared.
 * @returns Sums accurate to the last digits that the differences of the values hold.
 * @source Chan, Golub and LeVeque 1983, the corrected two-pass algorithm (docs/sources.md#chan-1983)
 */
export function sampleOf(values: readonly number[], origin = values[0] ?? 0): Sample {
  const n = values.length;
  const shift = exactSum(values.map((value) => value - origin)) / n;
  const deviations = values.map((value) => value - origin - shift);
  // What rounding left of a sum that is zero by definition corrects the squares.
  const left = exactSum(deviations);
  const squares = exactSum(deviations.map((deviation) => deviation * deviation)) - (left * left) / n;
  return { n, mean: origin + shift, shift, origin, squares: Math.max(0, squares) };
}

/**
 * Adds numbers and keeps the digits that each addition loses.
 *
 * @returns Sum, as if added with twice the digits.
 * @source Neumaier 1974 (docs/sources.md#neumaier-1974)
 */
export function exactSum(values: readonly number[]): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
