import { OutOfRangeError, requireInRange } from "../errors";
import { studentTUpperTail } from "../statistics";
import { averageRanks } from "./average-ranks";
import { SCORE_RANGE } from "./score-table";

export const RANKED_PAIRS_RANGE = { unit: "", min: 3, max: 1000 } as const;

/** So few pairs that every order can be looked at: 8! of them. */
const MOST_EXACT = 8;

/** Two correlations of the same order of ranks differ by rounding alone. */
const ROUNDING = 1e-12;

export type RankCorrelation =
  | {
      readonly ok: true;
      /** From −1, one falls as the other rises, to 1, they rise together. */
      readonly rho: number;
      /** Probability of a correlation at least as far from nothing, in either direction, by chance. */
      readonly p: number;
    }
  | {
      readonly ok: false;
      /** All values of one kind are the same, so there is no order to follow. */
      readonly reason: "no-differences";
    };

/**
 * Measures how far two things rise together, whatever the scale of either: Spearman's rank correlation.
 *
 * Only the order counts, so a strength of 1, 2, 3 may be held against a computed number. Up to eight pairs the probability
 * is exact, from all orders; beyond, Student's t approximates it.
 *
 * @param a.a - One value of each pair.
 * @param a.b - The other, in the same order.
 * @returns Correlation and its two-sided probability; or that one kind has no differences.
 * @validRange 3 to 1000 pairs.
 * @throws {@link OutOfRangeError} when there are too few or many pairs, the lists differ in length or a value is out of range.
 * @source Spearman 1904 (docs/sources.md#spearman-1904)
 * @example
 * rankCorrelation({ a: [20, 35, 60], b: [1, 2, 3] }); // { ok: true, rho: 1, p: 0.333 }
 */
export function rankCorrelation(a: { readonly a: readonly number[]; readonly b: readonly number[] }): RankCorrelation {
  const n = requireInRange("number of pairs", a.a.length, RANKED_PAIRS_RANGE);
  if (a.b.length !== n) throw new OutOfRangeError("number of second values", a.b.length, { unit: "", min: n, max: n });
  for (const value of [...a.a, ...a.b]) requireInRange("value", value, SCORE_RANGE);
  const first = deviations(a.a);
  const second = deviations(a.b);
  const scale = Math.sqrt(sumOfProducts(first, first) * sumOfProducts(second, second));
  if (scale === 0) return { ok: false, reason: "no-differences" };
  const rho = Math.max(-1, Math.min(1, sumOfProducts(first, second) / scale));
  if (n <= MOST_EXACT) return { ok: true, rho, p: exactProbability(first, second, scale) };
  const df = n - 2;
  const t = Math.min(1e15, Math.abs(rho) * Math.sqrt(df / (1 - rho * rho)));
  return { ok: true, rho, p: 2 * studentTUpperTail({ t, df }) };
}

function deviations(values: readonly number[]): readonly number[] {
  const middle = (values.length + 1) / 2;
  return averageRanks(values).ranks.map((rank) => rank - middle);
}

function sumOfProducts(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}

/** The share of all orders of the second that lie at least as far from no correlation. */
function exactProbability(first: readonly number[], second: readonly number[], scale: number): number {
  const observed = Math.abs(sumOfProducts(first, second));
  let all = 0;
  let asFar = 0;
  const order = [...second];
  const turn = (upTo: number): void => {
    if (upTo === 1) {
      all++;
      if (Math.abs(sumOfProducts(first, order)) >= observed - ROUNDING * scale) asFar++;
      return;
    }
    // Heap's way through all orders, one exchange at a time.
    for (let i = 0; i < upTo; i++) {
      turn(upTo - 1);
      const other = upTo % 2 === 0 ? i : 0;
      [order[other], order[upTo - 1]] = [order[upTo - 1] ?? 0, order[other] ?? 0];
    }
  };
  turn(order.length);
  return asFar / all;
}
