import { describe, expect, it } from "vitest";
import { rankCorrelation } from "@/lib/calc/judging";
import { expectPrinted } from "../../support/expect-printed";

const found = (a: readonly number[], b: readonly number[]) => {
  const correlation = rankCorrelation({ a, b });
  if (!correlation.ok) throw new Error(correlation.reason);
  return correlation;
};

describe("rankCorrelation", () => {
  it("is −29/165 with p 0.627 for ten people’s tests and hours of television (textbook example, p by Student’s t)", () => {
    const tests = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
    const hours = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
    const { rho, p } = found(tests, hours);
    expect(rho).toBeCloseTo(-29 / 165, 12);
    expectPrinted(p, "0.627");
  });

  it.each([
    // Of n! orders, the two ends alone are as far away.
    { n: 3, p: 2 / 6 },
    { n: 4, p: 2 / 24 },
    { n: 5, p: 2 / 120 },
    { n: 8, p: 2 / 40_320 },
  ])("of $n pairs in one order has a chance of two in all orders (counted)", ({ n, p }) => {
    const values = Array.from({ length: n }, (_, i) => i * i);
    expect(found(values, values)).toEqual({ ok: true, rho: 1, p });
    const fallen = found(
      values,
      values.map((value) => -value),
    );
    expect(fallen).toEqual({ ok: true, rho: -1, p });
  });

  it("is 0.5 with p 1 for three pairs of which two are exchanged, since every order is as far from nothing (by hand)", () => {
    // Ranks 1 2 3 against 1 3 2: 1 − 6·2/(3·8) = 0.5; all six orders lie at ±0.5 or ±1.
    expect(found([1, 2, 3], [1, 3, 2])).toEqual({ ok: true, rho: 0.5, p: 1 });
  });

  it("gives equal values the mean of their ranks (by hand: 1.5, 1.5, 3 against 1, 2, 3 is √3/2)", () => {
    expect(found([5, 5, 9], [1, 2, 3]).rho).toBeCloseTo(Math.sqrt(3) / 2, 12);
  });

  it("looks only at the order", () => {
    const a = [3, 1, 4, 1, 5, 9, 2, 6, 5, 3];
    const b = [2, 7, 1, 8, 2, 8, 1, 8, 2, 8];
    expect(
      found(
        a.map((value) => value ** 3 + 7),
        b,
      ).rho,
    ).toBeCloseTo(found(a, b).rho, 12);
  });

  it("says so where one kind has no differences", () => {
    expect(rankCorrelation({ a: [1, 2, 3], b: [2, 2, 2] })).toEqual({ ok: false, reason: "no-differences" });
  });

  it("refuses two pairs and lists of different lengths", () => {
    expect(() => rankCorrelation({ a: [1, 2], b: [1, 2] })).toThrow("number of pairs 2 is outside 3 to 1000");
    expect(() => rankCorrelation({ a: [1, 2, 3], b: [1, 2] })).toThrow("number of second values 2 is outside 3 to 3");
  });
});
