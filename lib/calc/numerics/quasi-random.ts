import { OutOfRangeError, requireInRange } from "../errors";

export const QUASI_RANDOM_RANGE = {
  dimension: { unit: "", min: 1, max: 40 },
  count: { unit: "", min: 1, max: 100_000 },
  seed: { unit: "", min: 0, max: 4294967295 },
} as const;

/** The square roots of primes are independent over the fractions, so no two coordinates ever fall into step. */
const PRIMES = [
  2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97, 101, 103, 107, 109,
  113, 127, 131, 137, 139, 149, 151, 157, 163, 167, 173,
];

/** Half a step of the grid of doubles: what a coordinate that comes out as 0 is given. */
const LEAST = 2 ** -54;

/**
 * Spreads points evenly through a cube, more evenly than chance would.
 *
 * Each coordinate moves on by the square root of its own prime and keeps the fraction (Richtmyer), from a start that the seed
 * chooses. A mean over such points errs by about 1/n where a mean over random points errs by 1/√n.
 *
 * @param a.dimension - Coordinates of each point.
 * @param a.count - Number of points.
 * @param a.seed - Whole number that chooses the start; the same seed gives the same points.
 * @returns Points whose coordinates lie between 0 and 1, ends left out.
 * @validRange 1 to 40 dimensions and up to 100 000 points; evenness wants far more points than dimensions.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 * @source Niederreiter 1992, chapter 3, after Richtmyer 1951 (docs/sources.md#niederreiter-1992)
 * @example
 * quasiRandom({ dimension: 2, count: 100, seed: 1 }).length; // 100
 */
export function quasiRandom(a: {
  readonly dimension: number;
  readonly count: number;
  readonly seed: number;
}): readonly (readonly number[])[] {
  const dimension = whole("dimension", a.dimension, QUASI_RANDOM_RANGE.dimension);
  const count = whole("number of points", a.count, QUASI_RANDOM_RANGE.count);
  const seed = whole("seed", a.seed, QUASI_RANDOM_RANGE.seed);
  const axes = PRIMES.slice(0, dimension).map((prime, j) => ({ step: Math.sqrt(prime) % 1, start: mixed(seed, j) }));
  return Array.from({ length: count }, (_, i) =>
    axes.map(({ step, start }) => Math.max(LEAST, (start + i * step) % 1)),
  );
}

function whole(
  quantity: string,
  value: number,
  range: (typeof QUASI_RANDOM_RANGE)[keyof typeof QUASI_RANDOM_RANGE],
): number {
  requireInRange(quantity, value, range);
  if (!Number.isInteger(value)) throw new OutOfRangeError(quantity, value, range);
  return value;
}

// Seed and axis stirred by multiplying and shifting, so that neighbouring seeds start far apart.
function mixed(seed: number, axis: number): number {
  let bits = (seed + Math.imul(axis + 1, 0x9e3779b9)) >>> 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return ((bits ^ (bits >>> 16)) >>> 0) / 4294967296;
}
