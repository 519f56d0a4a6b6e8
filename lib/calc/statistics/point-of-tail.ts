import { findRoot } from "../numerics";

// 2¹⁰⁰ is past every quantile that the ranges of the callers allow.
const MOST_DOUBLINGS = 100;

/**
 * Finds the point above which a falling tail leaves a probability.
 *
 * The logarithm of the tail is solved, so that a tail of 1e-12 is met as closely as one of a half.
 *
 * @param tail - Probability above a point at or above 0, falling from at least `above`.
 * @param above - Probability to be left.
 * @returns The point, to the last digits that the tail holds.
 */
export function pointOfTail(tail: (x: number) => number, above: number): number {
  let high = 1;
  for (let i = 0; i < MOST_DOUBLINGS && tail(high) > above; i++) high *= 2;
  const low = high === 1 ? 0 : high / 2;
  return findRoot({ f: (x) => Math.log(tail(x) / above), low, high, tolerance: 0 }).x;
}
