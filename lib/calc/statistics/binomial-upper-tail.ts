import { OutOfRangeError, requireInRange } from "../errors";
import { betaTail } from "./beta-tail";

export const BINOMIAL_RANGE = {
  n: { unit: "", min: 0, max: 1e6 },
  atLeast: { unit: "", min: 0, max: 1_000_001 },
  p: { unit: "", min: 0, max: 1 },
} as const;

/**
 * Finds how probable it is that at least so many of n trials succeed.
 *
 * @param a.n - Number of independent trials.
 * @param a.atLeast - Fewest successes that count; more than n never happens.
 * @param a.p - Probability that one succeeds.
 * @returns Exact probability, within 1e-12 of its size.
 * @validRange Whole numbers up to a million trials.
 * @throws {@link OutOfRangeError} when a count is negative, too large or broken, or the probability is outside 0 to 1.
 * @source Abramowitz and Stegun 1964, 26.5.24 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * binomialUpperTail({ n: 4, atLeast: 3, p: 0.5 }); // 0.3125
 */
export function binomialUpperTail(a: { readonly n: number; readonly atLeast: number; readonly p: number }): number {
  const n = wholeNumber("number of trials", a.n, BINOMIAL_RANGE.n);
  const atLeast = wholeNumber("number of successes", a.atLeast, BINOMIAL_RANGE.atLeast);
  const p = requireInRange("probability of success", a.p, BINOMIAL_RANGE.p);
  if (atLeast === 0) return 1;
  return atLeast > n ? 0 : betaTail({ x: p, rest: 1 - p, a: atLeast, b: n - atLeast + 1 });
}

function wholeNumber(
  quantity: string,
  value: number,
  range: typeof BINOMIAL_RANGE.n | typeof BINOMIAL_RANGE.atLeast,
): number {
  requireInRange(quantity, value, range);
  if (!Number.isInteger(value)) throw new OutOfRangeError(quantity, value, range);
  return value;
}
