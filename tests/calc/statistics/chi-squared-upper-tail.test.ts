import { describe, expect, it } from "vitest";
import { chiSquaredUpperTail } from "@/lib/calc/statistics";
import { expectWithin } from "../../support/expect-within";

/** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4: critical values with three decimals. */
const ROWS = [
  { df: 1, upper: 0.05, printed: 3.841 },
  { df: 1, upper: 0.01, printed: 6.635 },
  { df: 1, upper: 0.001, printed: 10.828 },
  { df: 2, upper: 0.9, printed: 0.211 },
  { df: 4, upper: 0.05, printed: 9.488 },
  { df: 4, upper: 0.01, printed: 13.277 },
  { df: 5, upper: 0.999, printed: 0.21 },
  { df: 10, upper: 0.9, printed: 4.865 },
  { df: 10, upper: 0.05, printed: 18.307 },
  { df: 10, upper: 0.01, printed: 23.209 },
  { df: 30, upper: 0.95, printed: 18.493 },
  { df: 100, upper: 0.975, printed: 74.222 },
  { df: 100, upper: 0.01, printed: 135.807 },
];

describe("chiSquaredUpperTail", () => {
  it.each(ROWS)("leaves $upper above $printed with $df degrees of freedom (NIST e-Handbook)", (row) => {
    // The true critical value lies within half a unit of the last printed digit, so the tail brackets the level.
    expect(chiSquaredUpperTail({ chiSquared: row.printed - 0.0005, df: row.df })).toBeGreaterThanOrEqual(row.upper);
    expect(chiSquaredUpperTail({ chiSquared: row.printed + 0.0005, df: row.df })).toBeLessThanOrEqual(row.upper);
  });

  it.each([2, 4, 10, 40, 200])("is the Poisson sum for %i degrees of freedom (A&S 26.4.21, a second method)", (df) => {
    for (const chiSquared of [0, 0.1, df / 2, df, 2 * df, 5 * df]) {
      let term = Math.exp(-chiSquared / 2);
      let sum = 0;
      for (let k = 0; k < df / 2; k++) {
        sum += term;
        term *= chiSquared / 2 / (k + 1);
      }
      expectWithin(chiSquaredUpperTail({ chiSquared, df }), sum, 1e-12);
    }
  });

  it("falls from 1 to 0 without a step where the method changes", () => {
    for (const df of [1, 3, 7, 50]) {
      const tails = Array.from({ length: 401 }, (_, i) => chiSquaredUpperTail({ chiSquared: (df * i) / 40, df }));
      expect(tails[0]).toBe(1);
      tails.forEach((tail, i) => expect(tail).toBeLessThanOrEqual(tails[i - 1] ?? 1));
    }
    expect(chiSquaredUpperTail({ chiSquared: 1e6, df: 1 })).toBe(0);
  });

  it("refuses a negative sum and a broken number of degrees of freedom", () => {
    expect(() => chiSquaredUpperTail({ chiSquared: -1, df: 2 })).toThrow("chi-squared -1 is outside 0 to 1000000");
    expect(() => chiSquaredUpperTail({ chiSquared: Number.NaN, df: 2 })).toThrow("chi-squared NaN");
    expect(() => chiSquaredUpperTail({ chiSquared: 1, df: 1.5 })).toThrow("degrees of freedom 1.5");
    expect(() => chiSquaredUpperTail({ chiSquared: 1, df: 0 })).toThrow("degrees of freedom 0");
  });
});
