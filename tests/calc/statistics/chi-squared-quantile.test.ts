import { describe, expect, it } from "vitest";
import { chiSquaredQuantile, chiSquaredUpperTail } from "@/lib/calc/statistics";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

/** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4. */
const ROWS = [
  { df: 1, p: 0.95, printed: "3.841" },
  { df: 1, p: 0.999, printed: "10.828" },
  { df: 2, p: 0.1, printed: "0.211" },
  { df: 4, p: 0.95, printed: "9.488" },
  { df: 5, p: 0.001, printed: "0.210" },
  { df: 10, p: 0.99, printed: "23.209" },
  { df: 30, p: 0.05, printed: "18.493" },
  { df: 100, p: 0.025, printed: "74.222" },
  { df: 100, p: 0.99, printed: "135.807" },
];

describe("chiSquaredQuantile", () => {
  it.each(ROWS)("is $printed below which $p lies with $df degrees of freedom (NIST e-Handbook)", (row) => {
    expectPrinted(chiSquaredQuantile({ p: row.p, df: row.df }), row.printed);
  });

  it("is −2 ln(1 − p) with two degrees of freedom (closed form)", () => {
    for (const p of [1e-6, 0.01, 0.5, 0.9, 1 - 1e-9])
      expectWithin(chiSquaredQuantile({ p, df: 2 }) / (-2 * Math.log1p(-p)), 1, 1e-9);
  });

  it("is undone by the tail (round trip)", () => {
    for (const df of [1, 3, 20, 10_000])
      for (const p of [0.001, 0.2, 0.5, 0.99])
        expectWithin(chiSquaredUpperTail({ chiSquared: chiSquaredQuantile({ p, df }), df }), 1 - p, 1e-11);
  });

  it("refuses certainty, and degrees of freedom that are broken or too many", () => {
    expect(() => chiSquaredQuantile({ p: 1, df: 2 })).toThrow("probability 1 is outside 0.000001 to 0.999999999999");
    expect(() => chiSquaredQuantile({ p: 0, df: 2 })).toThrow("probability 0 is outside");
    expect(() => chiSquaredQuantile({ p: 0.5, df: 1.5 })).toThrow("degrees of freedom 1.5 is outside 1 to 10000");
    expect(() => chiSquaredQuantile({ p: 0.5, df: 0 })).toThrow("degrees of freedom 0 is outside");
    expect(() => chiSquaredQuantile({ p: 0.5, df: 10_001 })).toThrow("degrees of freedom 10001 is outside");
  });
});
