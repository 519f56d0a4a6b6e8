import { describe, expect, it } from "vitest";
import { friedman, kendallW } from "@/lib/calc/judging";
import { ANXIETY, PULSE, ROUNDING_TIMES } from "../../reference/judging";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const agreement = (
  scores: readonly (readonly number[])[],
): { w: number; chiSquared: number; df: number; p: number } => {
  const found = kendallW(scores);
  if (!found.ok) throw new Error(found.reason);
  return found;
};
const difference = (scores: readonly (readonly number[])[]): { chiSquared: number; df: number; p: number } => {
  const found = friedman(scores);
  if (!found.ok) throw new Error(found.reason);
  return found;
};

describe("kendallW", () => {
  it("is 0.54, chi-squared 30.8 on 19, p 0.0429 for three raters of anxiety, with ties (R package documentation)", () => {
    const { w, chiSquared, df, p } = agreement(ANXIETY);
    expectPrinted(w, "0.54");
    expectPrinted(chiSquared, "30.8");
    expect(df).toBe(19);
    expectPrinted(p, "0.0429");
  });

  it("is 0.568, chi-squared 8.52 on 5, p 0.13 for three raters without ties (R package output)", () => {
    const { w, chiSquared, df, p } = agreement([
      [1, 6, 3, 2, 5, 4],
      [1, 5, 6, 2, 4, 3],
      [2, 3, 6, 5, 4, 1],
    ]);
    expectPrinted(w, "0.568");
    expectPrinted(chiSquared, "8.52");
    expect(df).toBe(5);
    expectPrinted(p, "0.13");
  });

  it("is 7/11 for three judges of three beers with one tie (by hand)", () => {
    // Ranks 1 2 3, 1 2.5 2.5 and 2 1 3; sums 4, 5.5, 8.5 about 6: S = 10.5. 12 × 10.5 / (9 × 24 − 3 × 6) = 126 / 198.
    const { w, chiSquared, p } = agreement([
      [32, 38, 41],
      [28, 35, 35],
      [30, 29, 40],
    ]);
    expectWithin(w, 126 / 198, 1e-12);
    expectWithin(chiSquared, (6 * 126) / 198, 1e-12);
    // Two degrees of freedom: exp(−χ²/2).
    expectWithin(p, Math.exp((-3 * 126) / 198), 1e-12);
  });

  it("is 1 where all judges have the same order and 0 where two have opposite ones", () => {
    expectWithin(
      agreement([
        [10, 20, 30, 40],
        [1, 2, 3, 4],
        [31, 32, 33, 50],
      ]).w,
      1,
      1e-12,
    );
    const opposite = agreement([
      [1, 2, 3, 4],
      [4, 3, 2, 1],
    ]);
    expect(opposite.w).toBe(0);
    expect(opposite.p).toBe(1);
  });

  it("looks only at the order and not at who is who", () => {
    const { w } = agreement(ANXIETY);
    expectWithin(agreement(ANXIETY.map((row) => row.map((score) => score ** 3 - 50))).w, w, 1e-12);
    expectWithin(agreement(ANXIETY.map((row) => [...row].reverse()).reverse()).w, w, 1e-12);
  });

  it("counts a judge who gives all the same as no order, and says so when all do", () => {
    // Ranks 1 2 3 and 2 2 2: S = 2; 24 / (4 × 24 − 2 × 24) = 0.5.
    expectWithin(
      agreement([
        [1, 2, 3],
        [7, 7, 7],
      ]).w,
      0.5,
      1e-12,
    );
    const level = { ok: false, reason: "no-differences" };
    expect(
      kendallW([
        [7, 7, 7],
        [9, 9, 9],
      ]),
    ).toEqual(level);
    expect(
      friedman([
        [7, 7, 7],
        [9, 9, 9],
      ]),
    ).toEqual(level);
  });

  it("refuses one judge, one entry, gaps and rows of another length", () => {
    expect(() => kendallW([[1, 2, 3]])).toThrow("number of judges 1 is outside 2 to 1000");
    expect(() => kendallW([])).toThrow("number of judges 0 is outside 2 to 1000");
    expect(() => kendallW([[1], [2]])).toThrow("number of entries 1 is outside 2 to 1000");
    expect(() => kendallW([[], []])).toThrow("number of entries 0 is outside 2 to 1000");
    expect(() => kendallW([[1, 2], [2]])).toThrow("number of scores of judge 2 1 is outside 2 to 2");
    expect(() => kendallW([[1, 2], [2, null] as never])).toThrow("score of judge 2 for entry 2 NaN is outside");
    expect(() =>
      kendallW([
        [1, Number.NaN],
        [2, 3],
      ]),
    ).toThrow("score of judge 1 for entry 2 NaN is outside");
    expect(() =>
      kendallW([
        [1e6, 2],
        [2, 1e6 + 1],
      ]),
    ).toThrow("score of judge 2 for entry 2 1000001 is outside");
  });
});

describe("friedman", () => {
  it("is 10.571 with p 0.00506 for the pulse of seven people (SciPy documentation)", () => {
    const { chiSquared, df, p } = difference(PULSE);
    expectPrinted(chiSquared, "10.571429");
    expect(df).toBe(2);
    expectPrinted(p, "0.005063");
  });

  it("is 11.143 on 2 with p 0.003805 for the rounding times (R documentation)", () => {
    const { chiSquared, df, p } = difference(ROUNDING_TIMES);
    expectPrinted(chiSquared, "11.143");
    expect(df).toBe(2);
    expectPrinted(p, "0.003805");
  });

  it("is judges times entries less one times W", () => {
    expectWithin(difference(ROUNDING_TIMES).chiSquared, 22 * 2 * agreement(ROUNDING_TIMES).w, 1e-12);
    expect(Object.keys(difference(PULSE))).toEqual(["ok", "chiSquared", "df", "p"]);
  });

  it("refuses gaps", () => {
    expect(() => friedman([[1, 2], [undefined, 2] as never])).toThrow("score of judge 2 for entry 1 NaN is outside");
  });
});
