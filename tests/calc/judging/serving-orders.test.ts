import { describe, expect, it } from "vitest";
import { servingOrders, type Spread } from "@/lib/calc/judging";

type Orders = readonly (readonly number[])[];

/** Fewest and most, counted here once more. */
function spreadOf(counts: readonly number[]): Spread {
  const sorted = [...counts].sort((a, b) => a - b);
  return { fewest: sorted[0] ?? 0, most: sorted.at(-1) ?? 0 };
}

const range = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i);
const places = (orders: Orders, n: number, length: number): readonly number[] =>
  range(n).flatMap((entry) => range(length).map((place) => orders.filter((order) => order[place] === entry).length));
const pairs = (n: number): readonly (readonly [number, number])[] =>
  range(n).flatMap((i) => range(n).flatMap((j) => (i === j ? [] : [[i, j] as const])));
const successions = (orders: Orders, n: number): readonly number[] =>
  pairs(n).map(
    ([i, j]) => orders.filter((order) => order.some((entry, at) => entry === i && order[at + 1] === j)).length,
  );
const together = (orders: Orders, n: number): readonly number[] =>
  pairs(n).map(([i, j]) => orders.filter((order) => order.includes(i) && order.includes(j)).length);

describe("servingOrders of all entries to all judges", () => {
  it.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14])(
    "puts each of %i entries equally often into each place and after each other one (Williams 1949)",
    (n) => {
      const rows = n % 2 === 0 ? n : 2 * n;
      for (const times of [1, 3]) {
        const { orders, balance } = servingOrders({ entries: n, judges: times * rows, seed: n });
        const each = (times * rows) / n;
        expect(orders).toHaveLength(times * rows);
        for (const order of orders) expect([...order].sort((a, b) => a - b)).toEqual(range(n));
        expect(new Set(places(orders, n, n))).toEqual(new Set([each]));
        expect(new Set(successions(orders, n))).toEqual(new Set([each]));
        expect(balance).toEqual({
          tastings: { fewest: times * rows, most: times * rows },
          places: { fewest: each, most: each },
          successions: { fewest: each, most: each },
          together: { fewest: times * rows, most: times * rows },
          connected: true,
        });
      }
    },
  );

  it("keeps places even to one for any number of judges, and says how even the successions are", () => {
    for (const n of [5, 6, 9]) {
      for (let judges = 1; judges <= 20; judges++) {
        const { orders, balance } = servingOrders({ entries: n, judges, seed: 7 });
        expect(orders).toHaveLength(judges);
        expect(balance.places).toEqual(spreadOf(places(orders, n, n)));
        expect(balance.places.most - balance.places.fewest).toBeLessThanOrEqual(1);
        expect(balance.successions).toEqual(spreadOf(successions(orders, n)));
      }
    }
  });

  it("has one order for one entry and two for two", () => {
    expect(servingOrders({ entries: 1, judges: 2, seed: 0 })).toEqual({
      orders: [[0], [0]],
      balance: {
        tastings: { fewest: 2, most: 2 },
        places: { fewest: 2, most: 2 },
        successions: { fewest: 0, most: 0 },
        together: { fewest: 0, most: 0 },
        connected: true,
      },
    });
    const two = servingOrders({ entries: 2, judges: 2, seed: 5 }).orders;
    expect([...two].sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0))).toEqual([
      [0, 1],
      [1, 0],
    ]);
  });

  it("is the same for the same seed and another for another", () => {
    const orders = (seed: number): Orders => servingOrders({ entries: 8, judges: 8, seed }).orders;
    expect(orders(1)).toEqual(orders(1));
    expect(orders(1)).not.toEqual(orders(2));
    expect(orders(1.9)).toEqual(orders(1));
  });

  it("takes a palate limit that is no limit for none", () => {
    const all = { entries: 6, judges: 6, seed: 3 };
    expect(servingOrders({ ...all, palateLimit: 6 })).toEqual(servingOrders(all));
    expect(servingOrders({ ...all, palateLimit: 20 })).toEqual(servingOrders(all));
  });
});

describe("servingOrders with a palate limit", () => {
  const DESIGNS = [
    { entries: 9, judges: 12, palateLimit: 3 },
    { entries: 12, judges: 6, palateLimit: 6 },
    { entries: 20, judges: 7, palateLimit: 5 },
    { entries: 11, judges: 13, palateLimit: 10 },
    { entries: 7, judges: 3, palateLimit: 1 },
  ];

  it.each(DESIGNS)("shares $entries entries out to $judges judges, $palateLimit each", (design) => {
    const { entries, judges, palateLimit } = design;
    const { orders, balance } = servingOrders({ ...design, seed: 11 });
    expect(orders).toHaveLength(judges);
    for (const order of orders) {
      expect(new Set(order).size).toBe(palateLimit);
      expect(order).toHaveLength(palateLimit);
      expect(order.every((entry) => entry >= 0 && entry < entries)).toBe(true);
    }
    const tastings = range(entries).map((entry) => orders.filter((order) => order.includes(entry)).length);
    expect(balance.tastings).toEqual(spreadOf(tastings));
    expect(balance.tastings.most - balance.tastings.fewest).toBeLessThanOrEqual(1);
    expect(balance.places).toEqual(spreadOf(places(orders, entries, palateLimit)));
    expect(balance.successions).toEqual(spreadOf(successions(orders, entries)));
    expect(balance.together).toEqual(spreadOf(together(orders, entries)));
  });

  it("shares pairs out more evenly than chance does", () => {
    const squares = (orders: Orders, n: number): number => together(orders, n).reduce((sum, c) => sum + c * c, 0);
    for (const design of DESIGNS.slice(0, 3)) {
      const { orders } = servingOrders({ ...design, seed: 4 });
      // What 12 × 3, 6 × 6 or 7 × 5 glasses in judges' sets of chance come to on average: each pair meets with k (k − 1) / n (n − 1).
      const { entries: n, judges, palateLimit: k } = design;
      const chance = (k * (k - 1)) / (n * (n - 1));
      const byChance = n * (n - 1) * (judges * chance * (1 - chance) + (judges * chance) ** 2);
      expect(squares(orders, n)).toBeLessThan(byChance);
    }
  });

  it("puts fewer successions of the same two into the orders than chance would", () => {
    const { orders, balance } = servingOrders({ entries: 12, judges: 12, palateLimit: 4, seed: 4 });
    // 36 successions over 132 ordered pairs need never repeat.
    expect(successions(orders, 12).reduce((sum, c) => sum + c, 0)).toBe(36);
    expect(balance.successions.most).toBeLessThanOrEqual(2);
  });

  it("says when entries cannot be compared because no judge links them", () => {
    expect(servingOrders({ entries: 8, judges: 2, palateLimit: 4, seed: 1 }).balance.connected).toBe(false);
    expect(servingOrders({ entries: 9, judges: 2, palateLimit: 4, seed: 1 }).balance.connected).toBe(false);
    expect(servingOrders({ entries: 7, judges: 2, palateLimit: 4, seed: 1 }).balance.connected).toBe(true);
  });

  it("is the same for the same seed and another for another", () => {
    const orders = (seed: number): Orders => servingOrders({ entries: 12, judges: 6, palateLimit: 5, seed }).orders;
    expect(orders(1)).toEqual(orders(1));
    expect(orders(1)).not.toEqual(orders(2));
  });
});

describe("servingOrders", () => {
  it("refuses numbers that are not whole or out of range", () => {
    const plan = { entries: 6, judges: 6, seed: 1 };
    expect(() => servingOrders({ ...plan, entries: 0 })).toThrow("number of entries 0 is outside 1 to 100");
    expect(() => servingOrders({ ...plan, entries: 101 })).toThrow("number of entries 101 is outside 1 to 100");
    expect(() => servingOrders({ ...plan, entries: 2.5 })).toThrow("number of entries 2.5 is outside 1 to 100");
    expect(() => servingOrders({ ...plan, judges: 0 })).toThrow("number of judges 0 is outside 1 to 100");
    expect(() => servingOrders({ ...plan, judges: 101 })).toThrow("number of judges 101 is outside 1 to 100");
    expect(() => servingOrders({ ...plan, palateLimit: 0 })).toThrow("palate limit 0 is outside 1 to 100");
    expect(() => servingOrders({ ...plan, palateLimit: 101 })).toThrow("palate limit 101 is outside 1 to 100");
    expect(() => servingOrders({ ...plan, seed: -1 })).toThrow("seed -1 is outside 0 to 4294967295");
    expect(() => servingOrders({ ...plan, seed: 4294967296 })).toThrow("seed 4294967296 is outside");
  });
});
