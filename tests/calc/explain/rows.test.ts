import { describe, expect, it } from "vitest";
import { explainFermentable, explainHop, type ExplainedNumber } from "@/lib/calc/explain";
import { EXPLAINED_BREWS, inputOf, PALE_ALE, type ExplainedBrew } from "../../support/explained-brews";

const BREWS = Object.entries(EXPLAINED_BREWS);

function hop(index: number, brew: ExplainedBrew = PALE_ALE): ExplainedNumber {
  const explained = explainHop({ ...brew, index });
  if (explained === null) throw new Error(`no hop ${index}`);
  return explained;
}

function fermentable(index: number, brew: ExplainedBrew = PALE_ALE): ExplainedNumber {
  const explained = explainFermentable({ ...brew, index });
  if (explained === null) throw new Error(`no fermentable ${index}`);
  return explained;
}

describe("the explanation of a hop addition", () => {
  it.each(BREWS)("%s: follows from Tinseth's equation and the inputs shown (Tinseth 1997)", (_name, brew) => {
    for (const [index, row] of brew.recipe.hops.entries()) {
      if (row.use === "dry") continue;
      const explained = hop(index, brew);
      const of = (label: string): number => inputOf(explained, label);
      const bigness = 1.65 * 0.000125 ** (of("Mean specific gravity, before and after the boil") - 1);
      const utilisation = (bigness * (1 - Math.exp(-0.04 * of("Equivalent minutes at 100 °C")))) / 4.15;
      const milligrams = utilisation * of("Alpha acids") * of("Hops") * 1000;
      const boiled = milligrams / of("Wort at the end of the boil, at 20 °C");
      expect(of("Utilisation")).toBeCloseTo(utilisation, 9);
      expect(explained.value).toBeCloseTo(boiled * of("Share of the volume that was boiled"), 6);
    }
  });

  it("counts dry hops as nothing and says so", () => {
    const explained = hop(3);
    expect(explained.value).toBe(0);
    expect(explained.words).toContain("no bitterness");
    expect(explained.whatIf).toEqual([]);
  });

  it("gives a tenth more bitterness for a tenth more hops, less what they keep of the wort", () => {
    const explained = hop(0);
    const more = explained.whatIf.find((line) => line.change === "10 % more of it")?.value ?? Number.NaN;
    const ratio = more / (explained.value ?? Number.NaN);
    expect(ratio).toBeLessThan(1.1);
    expect(ratio).toBeGreaterThan(1.09);
  });

  it("gives less to hops with less alpha acids and to hops added later", () => {
    const { value, whatIf } = hop(0);
    for (const change of ["alpha acids 1 percentage point lower", "added 10 minutes later"]) {
      expect(whatIf.find((line) => line.change === change)?.value).toBeLessThan(value ?? Number.NaN);
    }
  });

  it("has nothing to say of a row that is not there", () => {
    expect(explainHop({ ...PALE_ALE, index: 9 })).toBeNull();
    expect(explainFermentable({ ...PALE_ALE, index: 9 })).toBeNull();
  });
});

describe("the explanation of a fermentable", () => {
  it.each(BREWS)("%s: follows from mass, yield and losses", (_name, brew) => {
    for (const [index, row] of brew.recipe.fermentables.entries()) {
      const explained = fermentable(index, brew);
      const of = (label: string): number => inputOf(explained, label);
      const held = of("Mass") * (1 - of("Moisture")) * of("Yield of the dry substance");
      const kept = row.station === "mash" ? of("Conversion") * of("Lauter efficiency") : 1;
      expect(explained.value).toBeCloseTo(held * kept, 9);
    }
  });

  it.each(BREWS)("%s: shares of extract add up to one", (_name, brew) => {
    const shares = brew.recipe.fermentables.map((_row, i) => inputOf(fermentable(i, brew), "Share of all extract"));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it("loses nothing of sugar that goes into the kettle", () => {
    const explained = fermentable(3);
    expect(explained.value).toBeCloseTo(0.2 * (1 - 0.0005), 12);
    expect(explained.inputs.map((input) => input.label)).not.toContain("Lauter efficiency");
  });
});
