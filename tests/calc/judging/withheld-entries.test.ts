import { describe, expect, it } from "vitest";
import { servingOrders } from "@/lib/calc/judging";

type Orders = readonly (readonly number[])[];

const tastingsOf = (orders: Orders, entries: number): readonly number[] =>
  Array.from({ length: entries }, (_, entry) => orders.filter((order) => order.includes(entry)).length);

describe("servingOrders with entries that a judge must not get", () => {
  it("is the Williams square where nothing is withheld", () => {
    const plan = { entries: 6, judges: 6, seed: 3 };
    expect(servingOrders({ ...plan, without: [] })).toEqual(servingOrders(plan));
    expect(servingOrders({ ...plan, without: [[], [], [], [], [], []] })).toEqual(servingOrders(plan));
  });

  it("gives nobody what is withheld, and everybody the same number", () => {
    for (let seed = 0; seed < 40; seed++) {
      const without = [[0, 3], [], [5], [1], [], [2, 5]];
      const { orders } = servingOrders({ entries: 7, judges: 6, seed, without });
      for (const [judge, order] of orders.entries()) {
        expect(order).toHaveLength(5);
        expect(new Set(order).size).toBe(5);
        for (const entry of without[judge] ?? []) expect(order).not.toContain(entry);
      }
    }
  });

  it("keeps the palate limit where that is lower", () => {
    const { orders } = servingOrders({ entries: 9, judges: 6, palateLimit: 4, seed: 5, without: [[0], [1], [2]] });
    for (const order of orders) expect(order).toHaveLength(4);
    expect(orders[0]).not.toContain(0);
  });

  it("shares tastings out evenly to one where each judge brewed one entry (a law: 6 × 5 glasses over 6 beers)", () => {
    for (let seed = 0; seed < 20; seed++) {
      const without = [0, 1, 2, 3, 4, 5].map((entry) => [entry]);
      const { orders, balance } = servingOrders({ entries: 6, judges: 6, seed, without });
      // Each beer is withheld from one judge, so every other judge must get it.
      expect(tastingsOf(orders, 6)).toEqual([5, 5, 5, 5, 5, 5]);
      expect(balance.connected).toBe(true);
      // 24 successions over 30 ordered pairs, 30 places over 30: no pair need come three times.
      expect(balance.successions.most).toBeLessThanOrEqual(2);
      expect(balance.places.most).toBeLessThanOrEqual(2);
    }
  });

  it("says no more of who brewed what than the rule itself: lists are equally long whoever brewed", () => {
    const lengths = [0, 1, 2, 3].map((own) => {
      const { orders } = servingOrders({ entries: 4, judges: 3, seed: 9, without: [[own]] });
      return orders.map((order) => order.length);
    });
    expect(lengths).toEqual(lengths.map(() => [3, 3, 3]));
  });

  it("refuses a judge for whom nothing is left, and entries that are not there", () => {
    const plan = { entries: 2, judges: 2, seed: 1 };
    expect(() => servingOrders({ ...plan, without: [[0, 1]] })).toThrow(
      "entries left to a judge 0 is outside 1 to 100",
    );
    expect(() => servingOrders({ ...plan, without: [[2]] })).toThrow("withheld entry 2 is outside 0 to 1");
  });
});
