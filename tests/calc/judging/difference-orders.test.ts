import { describe, expect, it } from "vitest";
import { differenceOrders, type GlassOrder } from "@/lib/calc/judging";

const counts = (orders: readonly GlassOrder[]): ReadonlyMap<string, number> => {
  const found = new Map<string, number>();
  for (const order of orders) found.set(order.join(""), (found.get(order.join("")) ?? 0) + 1);
  return found;
};

describe("differenceOrders", () => {
  it("uses the six orders of a triangle equally often (ISO 4120:2021: ABB BAA AAB BBA ABA BAB)", () => {
    for (const seed of [0, 1, 7]) {
      const found = counts(differenceOrders({ test: "triangle", assessors: 24, seed }));
      expect([...found.keys()].sort()).toEqual(["001", "010", "011", "100", "101", "110"]);
      expect(new Set(found.values())).toEqual(new Set([4]));
    }
  });

  it("uses the four orders of a duo-trio equally often, with either beer as the reference", () => {
    const orders = differenceOrders({ test: "duo-trio", assessors: 20, seed: 3 });
    expect(new Set(counts(orders).values())).toEqual(new Set([5]));
    for (const [reference, ...others] of orders) {
      expect(others.filter((beer) => beer === reference)).toHaveLength(1);
    }
    expect(orders.filter(([reference]) => reference === 0)).toHaveLength(10);
  });

  it("differs by one order at most when the number is no multiple, and draws which", () => {
    for (let assessors = 1; assessors <= 13; assessors++) {
      const found = counts(differenceOrders({ test: "triangle", assessors, seed: assessors }));
      const every = ["001", "010", "011", "100", "101", "110"].map((order) => found.get(order) ?? 0);
      expect(Math.max(...every) - Math.min(...every)).toBeLessThanOrEqual(1);
    }
    const first = Array.from({ length: 60 }, (_, seed) => differenceOrders({ test: "triangle", assessors: 1, seed }));
    expect(counts(first.flat()).size).toBe(6);
  });

  it("puts the odd glass into each place about equally often over seeds: no assessor can count on one", () => {
    // 600 draws at one in three scatter by √(600 × 2/9) = 11.5; four of those each way.
    const places = [0, 0, 0];
    for (let seed = 0; seed < 600; seed++) {
      const [order = [0, 0, 1]] = differenceOrders({ test: "triangle", assessors: 7, seed });
      const odd = order.findIndex((beer) => order.filter((other) => other === beer).length === 1);
      places[odd] = (places[odd] ?? 0) + 1;
    }
    for (const place of places) expect(Math.abs(place - 200)).toBeLessThan(46);
  });

  it("refuses no assessors, and half of one", () => {
    expect(() => differenceOrders({ test: "triangle", assessors: 0, seed: 1 })).toThrow("number of assessors 0");
    expect(() => differenceOrders({ test: "triangle", assessors: 2.5, seed: 1 })).toThrow("number of assessors 2.5");
  });
});
