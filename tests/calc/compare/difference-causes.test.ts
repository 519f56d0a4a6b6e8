import { describe, expect, it } from "vitest";
import { differenceCauses, type ComparedReading, type QuantityCauses } from "@/lib/calc/compare";
import { namedRuns } from "@/lib/calc/compare/named-runs";
import { shapleyParts } from "@/lib/calc/compare/shapley";
import { intervals } from "@/lib/calc/ledger";
import { fraction, litres } from "@/lib/calc/units";
import { brewed, brewedOtherwise, brewInput, exactly, valueOf } from "../../support/brewed";
import { expectWithin } from "../../support/expect-within";
import { readingsOf } from "../../support/readings-of";

const ledger = brewed();
const predicted = intervals(brewInput());
const causesOf = (readings: readonly ComparedReading[]): readonly QuantityCauses[] =>
  differenceCauses({ ledger, intervals: predicted, readings });

function of(all: readonly QuantityCauses[], quantity: QuantityCauses["quantity"]): QuantityCauses {
  const found = all.find((each) => each.quantity === quantity);
  if (found === undefined) throw new Error(`nothing of ${quantity}`);
  return found;
}

describe("the division of a difference", () => {
  it("divides extract over mass as worked by hand (docs/worked-examples.md#difference-causes)", () => {
    // 3.2 kg of extract for 3.6, in 26 kg of wort for 25: 12.3077 for 14.4 °P.
    const strength = (mask: number) => [(100 * ((mask & 1) === 1 ? 3.2 : 3.6)) / ((mask & 2) === 2 ? 26 : 25)];
    const [extract, mass] = shapleyParts(2, strength);
    expectWithin(extract?.[0] ?? 0, -1.5692, 0.00005);
    expectWithin(mass?.[0] ?? 0, -0.5231, 0.00005);
    expectWithin((extract?.[0] ?? 0) + (mass?.[0] ?? 0), 12.3077 - 14.4, 0.00005);
  });

  it("adds up to the difference, whatever was read (law)", () => {
    const noisy = readingsOf(ledger, {
      "kettle.preBoil": 27.6,
      "kettle.preBoilGravity": 13.1,
      "fermenter.volume": 20.2,
    });
    for (const { difference, parts, reading } of causesOf(noisy)) {
      expectWithin(
        parts.reduce((sum, { value }) => sum + value, reading),
        difference,
        1e-9,
      );
    }
    expect(causesOf(noisy).map(({ quantity }) => quantity)).toHaveLength(4);
  });

  it("finds nothing to divide where all is as planned", () => {
    for (const { parts, named } of causesOf(readingsOf(ledger))) {
      for (const { value } of parts) expectWithin(value, 0, 1e-6);
      expect(named).toEqual([]);
    }
  });

  it("names the mash where it dissolved 80 % for 95 %, and next to nothing else", () => {
    const poor = brewedOtherwise({ lauter: { conversion: exactly(fraction(0.8)) } });
    const original = of(causesOf(readingsOf(poor)), "fermenter.originalExtract");
    expect(original.named.map(({ ids }) => ids)).toEqual([["mash"]]);
    expectWithin(original.named[0]?.value ?? 0, original.difference, 0.15 * Math.abs(original.difference));
    expect(original.parts.find(({ id }) => id === "mash")?.isMore).toBe(false);
  });

  it("names mash and lauter together where no first wort was read between them", () => {
    const poor = brewedOtherwise({
      lauter: { conversion: exactly(fraction(0.9)), bypass: exactly(fraction(0.5)) },
    });
    const readings = readingsOf(poor).filter(({ quantity }) => quantity !== "mash.firstWort");
    const wide = {
      ...predicted,
      "mash.dissolved": { low80: 3.4, high80: 4.2 },
      "lauter.lost": { low80: 0, high80: 0.6 },
    };
    const original = of(differenceCauses({ ledger, intervals: wide, readings }), "fermenter.originalExtract");
    expect(original.named[0]?.ids).toEqual(["mash", "lauter"]);
  });

  it("puts a volume down to trub alone where 3 L more stayed with it", () => {
    const kept = brewedOtherwise({ kettle: { trub: exactly(litres(5)) } });
    const volume = of(causesOf(readingsOf(kept)), "fermenter.volume");
    expect(volume.named.map(({ ids }) => ids)).toEqual([["left"]]);
    // What stays behind does not change the strength of what runs on.
    expectWithin(of(causesOf(readingsOf(kept)), "fermenter.originalExtract").parts[4]?.value ?? 1, 0, 1e-9);
  });

  it("names no cause where the reading is all there is", () => {
    const value = valueOf(ledger, "fermenter.originalExtract") - 0.8;
    const [original] = causesOf([{ quantity: "fermenter.originalExtract", value, sd: 0.25 }]);
    expect(original?.named.filter(({ ids }) => ids.length === 1)).toEqual([]);
  });

  it("counts a doubted reading as what the others make of it", () => {
    const wrong = readingsOf(ledger, { "fermenter.volume": valueOf(ledger, "fermenter.volume") + 4 });
    const volume = of(causesOf(wrong), "fermenter.volume");
    expect(volume.isDoubted).toBe(true);
    expectWithin(volume.difference, 0, 0.01);
  });

  it("names parts first that are clear alone, then the shortest runs that are clear together", () => {
    const parts = [
      { id: "a", value: 1 },
      { id: "b", value: 1 },
      { id: "c", value: 9 },
      { id: "d", value: 0.1 },
    ] as const;
    // Alone a and b are as uncertain as they are large; their sum is known to 0.3.
    const sdOf = (ids: readonly string[]) => (ids.length > 1 ? 0.3 : 1);
    expect(namedRuns(parts, sdOf).map(({ ids }) => ids)).toEqual([["a", "b"], ["c"]]);
  });
});
