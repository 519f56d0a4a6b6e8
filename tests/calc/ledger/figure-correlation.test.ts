import { describe, expect, it } from "vitest";
import { FIGURES, intervals, sampledIntervals, type Equipment } from "@/lib/calc/ledger";
import { brewInput } from "../../support/brewed";
import { garageKettle } from "../../support/brewing-fixtures";

describe("figures that were learned together", () => {
  it("are tied by what stands in the equipment, unless somebody says otherwise", () => {
    const input = brewInput();
    const correlations = [{ one: "kettle.trub", other: "kettle.transfer", coefficient: -0.8 }] as const;
    const tied = { ...input, equipment: { ...input.equipment, correlations } };
    expect(intervals(tied)).toEqual(intervals({ ...input, correlations }));
    expect(intervals({ ...tied, correlations: [] })).toEqual(intervals(input));
    expect(intervals(tied)).not.toEqual(intervals(input));
    const draws = { draws: 200, seed: 3 };
    expect(sampledIntervals({ ...tied, ...draws })).toEqual(sampledIntervals({ ...input, correlations, ...draws }));
  });

  it("are tied no more once one of them is set anew", () => {
    const [trub, boilOff] = ["kettle.trub", "kettle.boilOff"].map((name) => FIGURES.find((each) => each.name === name));
    const correlations = [
      { one: "kettle.trub", other: "kettle.transfer", coefficient: -0.8 },
      { one: "kettle.boilOff", other: "kettle.lossCoefficient", coefficient: 0.3 },
    ] as const;
    const equipment = { ...garageKettle, correlations };
    const again = (place: typeof trub, of: Equipment) => place?.withFigure(of, place.of(of)) ?? of;
    const [, boil] = correlations;
    expect(again(trub, equipment)).toEqual({ ...garageKettle, correlations: [boil] });
    expect(again(boilOff, again(trub, equipment))).toEqual(garageKettle);
  });
});
