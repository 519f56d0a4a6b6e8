import { OutOfRangeError } from "../errors";
import { ORDER_RANGE, requireWhole } from "./order-range";

/**
 * Splits a whole total by shares, so that the parts are whole and add up to it exactly.
 *
 * Everybody first gets the whole part of total × share / sum of shares; what is left goes, one unit each, to those with the
 * largest fractions (method of the largest remainder). Of equal fractions the earlier in the list gets it.
 *
 * @param a.total - What is split, whole: money in its smallest unit, or grams.
 * @param a.shares - Size of each share, whole.
 * @returns A part for each share, in the same order; each within one unit of the exact part.
 * @validRange Total from 0 to 1e15; 1 to 500 shares from 0 to 1e12, one of them above 0 unless the total is 0.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole, or no share takes a part.
 * @source Balinski and Young 1982 (docs/sources.md#balinski-young-1982)
 * @example
 * shareExactly({ total: 1000, shares: [1, 1, 1] }); // [334, 333, 333]
 */
export function shareExactly({
  total,
  shares,
}: {
  readonly total: number;
  readonly shares: readonly number[];
}): readonly number[] {
  requireWhole("number of shares", shares.length, ORDER_RANGE.people);
  const whole = BigInt(requireWhole("total", total, ORDER_RANGE.total));
  const weights = shares.map((share) => BigInt(requireWhole("share", share, ORDER_RANGE.share)));
  const sum = weights.reduce((all, weight) => all + weight, 0n);
  if (sum === 0n) {
    if (whole > 0n) throw new OutOfRangeError("sum of the shares", 0, ORDER_RANGE.size);
    return shares.map(() => 0);
  }
  // Products of two such numbers do not fit a double; the parts do.
  const parts = weights.map((weight) => Number((whole * weight) / sum));
  const left = total - parts.reduce((all, part) => all + part, 0);
  const remainders = weights.map((weight, place) => ({ place, remainder: (whole * weight) % sum }));
  const first = remainders.sort((a, b) =>
    a.remainder === b.remainder ? a.place - b.place : a.remainder > b.remainder ? -1 : 1,
  );
  const raised = new Set(first.slice(0, left).map(({ place }) => place));
  return parts.map((part, place) => (raised.has(place) ? part + 1 : part));
}
