import { describe, expect, it } from "vitest";
import { normalCdf, normalQuantile, Z80 } from "@/lib/calc/statistics";
import { NORMAL_CRITICAL, T_LEVELS } from "../../reference/critical-values";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

/** Table of the cumulative normal distribution with four decimals, common to textbooks. */
const CUMULATIVE = [
  { z: 0, printed: "0.5000" },
  { z: 0.1, printed: "0.5398" },
  { z: 0.5, printed: "0.6915" },
  { z: 1, printed: "0.8413" },
  { z: 1.33, printed: "0.9082" },
  { z: 1.45, printed: "0.9265" },
];

describe("normalCdf", () => {
  it.each(CUMULATIVE)("is $printed below $z (cumulative normal table)", ({ z, printed }) => {
    expectPrinted(normalCdf(z), printed);
  });

  it("is one half at the mean and its mirror image on both sides", () => {
    expect(normalCdf(0)).toBe(0.5);
    for (const z of [0.2, 1, 1.8, 3, 6]) expectWithin(normalCdf(z) + normalCdf(-z), 1, 2e-16);
  });

  it("keeps the digits of a far tail (Mills ratio, A&S 26.2.12, a second method)", () => {
    for (const z of [12, 20, 30]) {
      const series = 1 - z ** -2 + 3 * z ** -4 - 15 * z ** -6 + 105 * z ** -8 - 945 * z ** -10 + 10395 * z ** -12;
      const tail = (Math.exp((-z * z) / 2) / (z * Math.sqrt(2 * Math.PI))) * series;
      expectWithin(normalCdf(-z) / tail, 1, 135135 * z ** -14 + 1e-13);
    }
  });

  it("ends at 0 and at 1", () => {
    expect(normalCdf(-1e6)).toBe(0);
    expect(normalCdf(1e6)).toBe(1);
    expect(normalCdf(-37)).toBeGreaterThan(0);
  });

  it("refuses what is not a number and what is past a million", () => {
    expect(() => normalCdf(NaN)).toThrow("normal deviate NaN is outside -1000000 to 1000000");
    expect(() => normalCdf(1_000_001)).toThrow("normal deviate 1000001 is outside");
    expect(() => normalCdf(-1_000_001)).toThrow("normal deviate -1000001 is outside");
  });
});

describe("Z80", () => {
  it("is 1.2816 and holds the central four fifths (upper 10 % point of the normal table)", () => {
    expectPrinted(Z80, "1.2816");
    expectWithin(normalCdf(Z80) - normalCdf(-Z80), 0.8, 1e-12);
  });
});

describe("normalQuantile", () => {
  it.each(T_LEVELS.map((above, i) => ({ above, printed: NORMAL_CRITICAL[i] ?? "" })))(
    "is $printed where $above lies above (NIST e-Handbook 1.3.6.7.2, last row)",
    ({ above, printed }) => {
      expectPrinted(normalQuantile(1 - above), printed);
      expectPrinted(-normalQuantile(above), printed);
    },
  );

  it("is 0 in the middle", () => {
    expect(normalQuantile(0.5)).toBe(0);
  });

  it("is undone by the distribution from one end to the other (round trip)", () => {
    for (const p of [1e-300, 1e-100, 1e-12, 1e-3, 0.2, 0.4999])
      expectWithin(normalCdf(normalQuantile(p)) / p, 1, 1e-12);
    for (const p of [0.5001, 0.8, 0.999, 1 - 2 ** -40]) expectWithin(normalCdf(normalQuantile(p)), p, 1e-15);
  });

  it("refuses 0, 1 and what is not a number", () => {
    expect(() => normalQuantile(0)).toThrow("probability 0 is outside 1e-300 to");
    expect(() => normalQuantile(1)).toThrow("probability 1 is outside");
    expect(() => normalQuantile(NaN)).toThrow("probability NaN is outside");
    expect(normalQuantile(1 - 2 ** -53)).toBeGreaterThan(8);
  });
});
