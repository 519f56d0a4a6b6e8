import { describe, expect, it } from "vitest";
import { grubbs, type Grubbs, medianAbsoluteDeviation, modifiedZ } from "@/lib/calc/statistics";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

/** Tietjen and Moore 1972: mass-spectrometer measurements of a uranium isotope (NIST e-Handbook 1.3.5.17.1). */
const URANIUM = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

function told(a: Parameters<typeof grubbs>[0]): Extract<Grubbs, { ok: true }> {
  const result = grubbs(a);
  if (!result.ok) throw new Error(result.reason);
  return result;
}

const ranks = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

describe("grubbs", () => {
  it("calls the last of the uranium measurements stray (NIST e-Handbook: 2.4687 against 2.032)", () => {
    const result = told({ values: URANIUM, alpha: 0.05, side: "upper" });
    // The handbook cuts 2.46876 off after four decimals.
    expectWithin(result.g, 2.4687, 0.0001);
    expectPrinted(result.critical, "2.032");
    expect(result).toMatchObject({ outlying: true, index: 7, value: 245.57 });
  });

  it.each([
    { n: 6, printed: "1.822" },
    { n: 10, printed: "2.176" },
    { n: 20, printed: "2.557" },
  ])("holds $n values against $printed at 5 % on one side (Grubbs 1969; ASTM E178)", ({ n, printed }) => {
    expectPrinted(told({ values: ranks(n), alpha: 0.05, side: "upper" }).critical, printed);
  });

  it("asks for more when both sides are in question: 5 % on both is 2.5 % on one (identity)", () => {
    const both = told({ values: ranks(10), alpha: 0.05 });
    expectWithin(both.critical, told({ values: ranks(10), alpha: 0.025, side: "lower" }).critical, 1e-12);
    expect(both.outlying).toBe(false);
  });

  it("looks on the side it is told to, by hand: 0, 1, 2, 9", () => {
    // Mean 3, squares 9 + 4 + 1 + 36 = 50 on 3.
    const values = [0, 1, 9, 2];
    const sd = Math.sqrt(50 / 3);
    const upper = told({ values, alpha: 0.05, side: "upper" });
    expectWithin(upper.g, 6 / sd, 1e-14);
    expect(upper).toMatchObject({ index: 2, value: 9 });
    const lower = told({ values, alpha: 0.05, side: "lower" });
    expectWithin(lower.g, 3 / sd, 1e-14);
    expect(lower).toMatchObject({ index: 0, value: 0 });
    expect(told({ values, alpha: 0.05 })).toMatchObject({ g: upper.g, index: 2, value: 9 });
  });

  it("never exceeds (n − 1)/√n, however far the stray lies", () => {
    expectWithin(told({ values: [0, 0, 0, 0, 1e6], alpha: 0.05 }).g, 4 / Math.sqrt(5), 1e-12);
  });

  it("says when all values are the same", () => {
    expect(grubbs({ values: [2, 2, 2], alpha: 0.05 })).toEqual({ ok: false, reason: "no-scatter" });
  });

  it("refuses two values and levels past their ends", () => {
    expect(() => grubbs({ values: [1, 2], alpha: 0.05 })).toThrow("number of values 2 is outside 3 to 10000");
    expect(() => grubbs({ values: [1, 2, NaN], alpha: 0.05 })).toThrow("value NaN is outside");
    expect(() => grubbs({ values: [1, 2, 4], alpha: 0 })).toThrow("alpha 0 is outside 0.000001 to 0.5");
    expect(() => grubbs({ values: [1, 2, 4], alpha: 0.51 })).toThrow("alpha 0.51 is outside 0.000001 to 0.5");
  });
});

describe("medianAbsoluteDeviation", () => {
  it("is worked by hand for the uranium measurements", () => {
    // Median (200.82 + 201.92)/2 = 201.37; distances 2.06 1.84 1.18 0.55 0.55 0.58 0.81 44.2, so their middle is (0.81 + 1.18)/2.
    const result = medianAbsoluteDeviation(URANIUM);
    expectWithin(result.median, 201.37, 1e-12);
    expectWithin(result.deviation, 0.995, 1e-12);
    expectWithin(result.sd, 1.4826 * 0.995, 1e-12);
  });

  it("hardly minds how far a stray lies", () => {
    expect(medianAbsoluteDeviation([1, 2, 3, 4, 1e9])).toEqual({ median: 3, deviation: 1, sd: 1.4826 });
    expect(medianAbsoluteDeviation([7])).toEqual({ median: 7, deviation: 0, sd: 0 });
  });

  it("refuses an empty sample", () => {
    expect(() => medianAbsoluteDeviation([])).toThrow("number of values 0 is outside 1 to 100000");
    expect(() => medianAbsoluteDeviation([NaN])).toThrow("value NaN is outside");
  });
});

describe("modifiedZ", () => {
  it("is worked by hand for the uranium measurements, and calls the last stray", () => {
    const result = modifiedZ(URANIUM);
    if (!result.ok) throw new Error(result.reason);
    expectWithin(result.z[7] ?? NaN, (0.6745 * 44.2) / 0.995, 1e-9);
    expectWithin(result.z[0] ?? NaN, (0.6745 * -2.06) / 0.995, 1e-9);
    expect(result.stray).toEqual([7]);
  });

  it("draws the line at 3.5 on either side", () => {
    // Deviation 1 about 0, so a value is stray from 3.5/0.6745 = 5.189 on.
    const stray = (far: number): unknown => modifiedZ([-1, -1, 0, 1, 1, far, -far]);
    expect(stray(5.18)).toMatchObject({ ok: true, stray: [] });
    expect(stray(5.2)).toMatchObject({ ok: true, stray: [5, 6] });
  });

  it("says when most values are the same", () => {
    expect(modifiedZ([4, 4, 4, 9])).toEqual({ ok: false, reason: "no-scatter", median: 4 });
    expect(modifiedZ([4, 4])).toEqual({ ok: false, reason: "no-scatter", median: 4 });
  });
});
