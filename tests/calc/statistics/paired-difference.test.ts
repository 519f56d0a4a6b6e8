import { describe, expect, it } from "vitest";
import { pairedDifference, type PairedDifference } from "@/lib/calc/statistics";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

/** Student 1908: additional hours of sleep of ten patients with two drugs. */
const SLEEP = {
  a: [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2],
  b: [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4],
};

function told(a: readonly number[], b: readonly number[]): Extract<PairedDifference, { ok: true }> {
  const result = pairedDifference({ a, b });
  if (!result.ok) throw new Error(result.reason);
  return result;
}

describe("pairedDifference", () => {
  it("is what is printed for Student's sleep data (R documentation, t.test)", () => {
    const result = told(SLEEP.a, SLEEP.b);
    expectPrinted(result.t, "-4.0621");
    expectPrinted(result.p, "0.002833");
    expectPrinted(result.meanDifference, "-1.58");
    expectPrinted(result.low95, "-2.4598858");
    expectPrinted(result.high95, "-0.7001142");
    expect(result.df).toBe(9);
  });

  it("is worked by hand: 1, 2, 1 apart", () => {
    // Mean 4/3, squares 2/3 on 2: sd √(1/3), error 1/3, t = 4; with 2 degrees of freedom p = 1 − 4/√18, and the quantile of
    // 0.9 is 0.8 √2 / √(1 − 0.64).
    const result = told([5, 7, 6], [4, 5, 5]);
    expectWithin(result.sd, Math.sqrt(1 / 3), 1e-14);
    expectWithin(result.standardError, 1 / 3, 1e-14);
    expectWithin(result.t, 4, 1e-13);
    expectWithin(result.p, 1 - 4 / Math.sqrt(18), 1e-12);
    const reach = (0.8 * Math.SQRT2) / 0.6 / 3;
    expectWithin(result.low80, 4 / 3 - reach, 1e-12);
    expectWithin(result.high80, 4 / 3 + reach, 1e-12);
  });

  it("turns its sign when the lists change places", () => {
    const there = told(SLEEP.a, SLEEP.b);
    const back = told(SLEEP.b, SLEEP.a);
    expectWithin(back.t, -there.t, 1e-14);
    expectWithin(back.p, there.p, 1e-15);
    expectWithin(back.low80, -there.high80, 1e-14);
  });

  it("says when all pairs differ by the same", () => {
    expect(pairedDifference({ a: [3, 4, 5], b: [1, 2, 3] })).toEqual({
      ok: false,
      reason: "no-scatter",
      meanDifference: 2,
    });
    expect(pairedDifference({ a: [3, 4], b: [3, 4] })).toEqual({ ok: false, reason: "no-scatter", meanDifference: 0 });
  });

  it("refuses one pair, lists of different length and what is not a number", () => {
    expect(() => pairedDifference({ a: [1], b: [2] })).toThrow("number of pairs 1 is outside 2 to 100000");
    expect(() => pairedDifference({ a: [1, 2], b: [2] })).toThrow("number of second values 1 is outside 2 to 2");
    expect(() => pairedDifference({ a: [1, NaN], b: [1, 2] })).toThrow("value NaN is outside");
    expect(() => pairedDifference({ a: [1, 2], b: [1, Infinity] })).toThrow("value Infinity is outside");
  });
});
