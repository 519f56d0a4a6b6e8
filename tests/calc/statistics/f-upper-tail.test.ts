import { describe, expect, it } from "vitest";
import { fUpperTail, studentTUpperTail } from "@/lib/calc/statistics";
import { F_LEVELS, F_ROWS } from "../../reference/critical-values";
import { expectWithin } from "../../support/expect-within";

const CELLS = F_ROWS.flatMap(([df1, df2, ...values]) =>
  values.map((printed, i) => ({ df1, df2, above: F_LEVELS[i] ?? NaN, printed: Number(printed) })),
);

describe("fUpperTail", () => {
  it.each(CELLS)("leaves $above above $printed with $df1 and $df2 degrees of freedom (table of F)", (cell) => {
    // The true critical value lies within half a unit of the last printed digit, so the tail brackets the level.
    expect(fUpperTail({ ...cell, f: cell.printed - 0.00005 })).toBeGreaterThanOrEqual(cell.above);
    expect(fUpperTail({ ...cell, f: cell.printed + 0.00005 })).toBeLessThanOrEqual(cell.above);
  });

  it("is (1 + 2 f / n)^(−n/2) with two degrees of freedom above (closed form)", () => {
    for (const n of [1, 5, 40])
      for (const f of [0, 0.3, 2, 50])
        expectWithin(fUpperTail({ f, df1: 2, df2: n }) / (1 + (2 * f) / n) ** (-n / 2), 1, 1e-12);
  });

  it("is both tails of Student's t with one degree of freedom above (identity)", () => {
    for (const t of [0.1, 1, 2.228, 30])
      expectWithin(fUpperTail({ f: t * t, df1: 1, df2: 10 }), 2 * studentTUpperTail({ t, df: 10 }), 1e-12);
  });

  it("turns round when the ratio does (identity)", () => {
    for (const f of [0.01, 0.7, 1, 9])
      expectWithin(fUpperTail({ f, df1: 3.5, df2: 8 }) + fUpperTail({ f: 1 / f, df1: 8, df2: 3.5 }), 1, 1e-14);
  });

  it("falls from 1 at 0", () => {
    expect(fUpperTail({ f: 0, df1: 4, df2: 4 })).toBe(1);
    const tails = Array.from({ length: 200 }, (_, i) => fUpperTail({ f: i / 20, df1: 4, df2: 9 }));
    tails.forEach((tail, i) => expect(tail).toBeLessThanOrEqual(tails[i - 1] ?? 1));
  });

  it("refuses ratios and degrees of freedom past their ends", () => {
    expect(() => fUpperTail({ f: -1e-9, df1: 1, df2: 1 })).toThrow(
      "ratio of mean squares -1e-9 is outside 0 to 1e+300",
    );
    expect(() => fUpperTail({ f: 1, df1: 0.09, df2: 1 })).toThrow(
      "degrees of freedom above 0.09 is outside 0.1 to 1000000",
    );
    expect(() => fUpperTail({ f: 1, df1: 1, df2: 1_000_001 })).toThrow("degrees of freedom below 1000001 is outside");
    expect(() => fUpperTail({ f: NaN, df1: 1, df2: 1 })).toThrow("ratio of mean squares NaN");
  });
});
