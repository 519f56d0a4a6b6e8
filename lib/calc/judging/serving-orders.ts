import { OutOfRangeError, requireInRange } from "../errors";
import { chooseTastings } from "./choose-tastings";
import { orderTastings } from "./order-tastings";
import { seededRandom, type SeededRandom } from "./seeded-random";
import { servingBalance, type ServingBalance } from "./serving-balance";
import { shuffle } from "./shuffle";
import { williamsSquare } from "./williams-square";

export const SERVING_RANGE = {
  entries: { unit: "", min: 1, max: 100 },
  judges: { unit: "", min: 1, max: 100 },
  palateLimit: { unit: "", min: 1, max: 100 },
} as const;

export interface ServingOrders {
  /** For each judge the entries, counted from zero, in the order of tasting. */
  readonly orders: readonly (readonly number[])[];
  readonly balance: ServingBalance;
}

/**
 * Lays out in which order each judge tastes the entries, so that place and predecessor favour none.
 *
 * When all are tasted by all, the rows of Williams squares: with a multiple of n judges for an even number n of entries, or
 * of 2n for an odd one, each entry stands equally often in each place and after each other entry. With other numbers of
 * judges, more entries than a judge can taste, or entries that a judge must not get, the orders are as even as a search
 * found, and the balance says how even. Everyone tastes the same number, so that it says nothing of what was withheld.
 *
 * @param a.entries - Number of entries.
 * @param a.judges - Number of judges.
 * @param a.seed - Chooses which entry and which judge gets which row; the same seed gives the same orders.
 * @param a.palateLimit - Most entries that a judge can taste well; without it everyone tastes all.
 * @param a.without - For each judge the entries that he or she must not get, such as an own beer.
 * @returns Orders and how balanced they are.
 * @validRange 1 to 100 entries, 1 to 100 judges, whole numbers; at least one entry is left to every judge.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole, or nothing is left to a judge.
 * @source Williams 1949 (docs/sources.md#williams-1949)
 * @example
 * servingOrders({ entries: 4, judges: 4, seed: 1 }).balance.successions; // { fewest: 1, most: 1 }
 */
export function servingOrders(a: {
  readonly entries: number;
  readonly judges: number;
  readonly seed: number;
  readonly palateLimit?: number;
  readonly without?: readonly (readonly number[])[];
}): ServingOrders {
  const entries = requireWhole("number of entries", a.entries, SERVING_RANGE.entries);
  const judges = requireWhole("number of judges", a.judges, SERVING_RANGE.judges);
  const palate =
    a.palateLimit === undefined ? entries : requireWhole("palate limit", a.palateLimit, SERVING_RANGE.palateLimit);
  const without = (a.without ?? []).map((withheld) => withheldOf(withheld, entries));
  const left = entries - Math.max(0, ...without.map((withheld) => withheld.length));
  const limit = Math.min(palate, requireInRange("entries left to a judge", left, SERVING_RANGE.entries));
  const random = seededRandom(a.seed);
  const orders =
    limit >= entries
      ? completeOrders(entries, judges, random)
      : orderTastings(chooseTastings({ entries, judges, limit, without, random }), entries, random);
  return { orders, balance: servingBalance(orders, entries) };
}

// A whole square is used up before the next begins, so that places differ by one at most whatever the number of judges.
function completeOrders(entries: number, judges: number, random: SeededRandom): readonly (readonly number[])[] {
  const design = williamsSquare(entries);
  const labels = shuffle(
    Array.from({ length: entries }, (_, entry) => entry),
    random,
  );
  const orders: (readonly number[])[] = [];
  while (orders.length < judges) {
    for (let first = 0; first < design.length; first += entries) {
      const square = shuffle(design.slice(first, first + entries), random);
      orders.push(...square.map((order) => order.map((entry) => labels[entry] ?? entry)));
    }
  }
  return orders.slice(0, judges);
}

function withheldOf(withheld: readonly number[], entries: number): readonly number[] {
  const range = { unit: "", min: 0, max: entries - 1 };
  return [...new Set(withheld.map((entry) => requireWhole("withheld entry", entry, range)))];
}

function requireWhole(quantity: string, value: number, range: { unit: string; min: number; max: number }): number {
  requireInRange(quantity, value, range);
  if (!Number.isInteger(value)) throw new OutOfRangeError(quantity, value, range);
  return value;
}
