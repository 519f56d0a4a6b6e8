import { describe, expect, it } from "vitest";
import { germanDegrees, milligramsPerLitre as mgL } from "@/lib/calc/units";
import { calciumCarbonateFromGermanDegrees, checkAnalysis } from "@/lib/calc/water";
import { germanDegreesFromCalciumCarbonate, sulfateToChloride } from "@/lib/calc/water";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";
import { waterOf } from "../../support/water-of";

describe("checkAnalysis", () => {
  // One mEq/L: 22.99 mg of sodium, 35.45 mg of chloride.
  const salty = (cations: number, anions: number): ReturnType<typeof checkAnalysis> =>
    checkAnalysis(waterOf({ sodium: 22.99 * cations, chloride: 35.45 * anions }));

  it.each([
    // Standard Methods 1030 E: 0.2 mEq/L up to 3 mEq/L of anions.
    { cations: 1.19, anions: 1, verdict: "sound", allowed: "0.20" },
    { cations: 1.21, anions: 1, verdict: "doubtful", allowed: "0.20" },
    { cations: 2.81, anions: 3, verdict: "sound", allowed: "0.20" },
    { cations: 2.79, anions: 3, verdict: "fair", allowed: "0.20" },
    // 2 % of both sums up to 10.
    { cations: 3.1, anions: 3.01, verdict: "sound", allowed: "0.12" },
    { cations: 5.2, anions: 5, verdict: "sound", allowed: "0.20" },
    { cations: 5.21, anions: 5, verdict: "fair", allowed: "0.20" },
    { cations: 9.6, anions: 10, verdict: "fair", allowed: "0.39" },
    { cations: 5.5, anions: 5, verdict: "fair", allowed: "0.21" },
    { cations: 5.6, anions: 5, verdict: "doubtful", allowed: "0.21" },
    // 5 % above.
    { cations: 9.6, anions: 10.01, verdict: "sound", allowed: "0.98" },
    { cations: 22, anions: 20, verdict: "sound", allowed: "2.10" },
    { cations: 22.2, anions: 20, verdict: "doubtful", allowed: "2.11" },
  ])("calls $cations against $anions mEq/L $verdict", ({ cations, anions, verdict, allowed }) => {
    const check = salty(cations, anions);
    expect(check.verdict).toBe(verdict);
    expectPrinted(check.allowed, allowed);
    expectWithin(check.difference, Math.abs(cations - anions), 1e-9);
    expect(check.missing).toBe(cations > anions ? "anions" : "cations");
  });

  it("misses nothing in pure water", () => {
    expect(checkAnalysis(waterOf({}))).toEqual({ verdict: "sound", missing: "none", difference: 0, allowed: 0.2 });
  });

  it("refuses an ion below zero", () => {
    const wrong = { ...waterOf({}), ...(JSON.parse('{ "sodium": -1 }') as object) };
    expect(() => checkAnalysis(wrong)).toThrow("sodium -1 mg/L is outside 0 to 10000 mg/L");
  });
});

describe("sulfateToChloride", () => {
  it("divides by mass", () => {
    expect(sulfateToChloride({ sulfate: mgL(150), chloride: mgL(75) })).toEqual({ ok: true, ratio: 2 });
    expect(sulfateToChloride({ sulfate: mgL(0), chloride: mgL(75) })).toEqual({ ok: true, ratio: 0 });
    expect(sulfateToChloride({ sulfate: mgL(1), chloride: mgL(0.001) })).toEqual({ ok: true, ratio: 1000 });
  });

  it("has no answer without chloride", () => {
    expect(sulfateToChloride({ sulfate: mgL(150), chloride: mgL(0) })).toEqual({ ok: false, reason: "no-chloride" });
    expect(sulfateToChloride({ sulfate: mgL(1), chloride: mgL(0.0009) }).ok).toBe(false);
  });

  it("refuses what no water holds", () => {
    const off = JSON.parse("10001") as ReturnType<typeof mgL>;
    expect(() => sulfateToChloride({ sulfate: off, chloride: mgL(1) })).toThrow("sulfate 10001 mg/L is outside");
    expect(() => sulfateToChloride({ sulfate: mgL(1), chloride: off })).toThrow("chloride 10001 mg/L is outside");
  });
});

describe("German degrees", () => {
  it("are 17.85 mg/L of calcium carbonate each (10 mg/L of CaO: 10 × 100.086 / 56.077)", () => {
    expectPrinted(calciumCarbonateFromGermanDegrees(germanDegrees(1)), "17.85");
    expectPrinted(germanDegreesFromCalciumCarbonate(mgL(100)), "5.60");
  });

  it("count 2.804 to a milliequivalent, 50.043 mg/L of calcium carbonate", () => {
    expectPrinted(germanDegreesFromCalciumCarbonate(mgL(50.043)), "2.804");
  });

  it("come back from calcium carbonate", () => {
    for (const degrees of [0, 1, 22.5, 560]) {
      const back = germanDegreesFromCalciumCarbonate(calciumCarbonateFromGermanDegrees(germanDegrees(degrees)));
      expectWithin(back, degrees, 1e-9);
    }
  });

  it("refuse what no water holds", () => {
    expect(() => calciumCarbonateFromGermanDegrees(germanDegrees(560.1))).toThrow(
      "hardness 560.1 °dH is outside 0 to 560 °dH",
    );
    const off = JSON.parse("10001") as ReturnType<typeof mgL>;
    expect(() => germanDegreesFromCalciumCarbonate(off)).toThrow("hardness 10001 mg/L is outside 0 to 10000 mg/L");
  });
});
