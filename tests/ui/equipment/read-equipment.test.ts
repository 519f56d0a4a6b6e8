import { describe, expect, it } from "vitest";
import { DEFAULT_PREFERENCES, type Preferences } from "@/lib/model/preferences";
import { draftOfEquipment } from "@/lib/ui/equipment/equipment-draft";
import { derivedFigures } from "@/lib/ui/equipment/derived-figures";
import { readEquipment } from "@/lib/ui/equipment/read-equipment";
import { typed } from "@/lib/ui/recipe/entry";
import { volts } from "@/lib/calc/units";
import { garageKettle } from "../../support/brewing-fixtures";

const US: Preferences = { units: "us", gravity: "plato", colour: "srm", theme: "auto" };

describe("readEquipment", () => {
  it.each([
    ["metric", DEFAULT_PREFERENCES],
    ["US", US],
  ])("reads a stored profile back exactly as it was, in %s units", (_name, preferences) => {
    const draft = draftOfEquipment(garageKettle, preferences);
    expect(readEquipment(draft, preferences)).toEqual({ equipment: garageKettle, problems: {} });
  });

  it("ties figures as before where nobody has changed them, and no others", () => {
    const tie = { one: "kettle.trub", other: "kettle.transfer", coefficient: -0.6 } as const;
    const learned = { ...garageKettle, correlations: [tie, { ...tie, one: "kettle.boilOff" } as const] };
    const draft = draftOfEquipment(learned, US);
    expect(readEquipment({ ...draft, name: "Another name" }, US).equipment?.correlations).toEqual(learned.correlations);
    const figures = { ...draft.figures, "kettle.boilOff": { ...draft.figures["kettle.boilOff"], sd: typed("0.2") } };
    expect(readEquipment({ ...draft, figures }, US).equipment?.correlations).toEqual([tie]);
  });

  it("refuses a kettle of 0 L with field, value and range", () => {
    const draft = draftOfEquipment(garageKettle, DEFAULT_PREFERENCES);
    const empty = { ...draft, numbers: { ...draft.numbers, "kettle.capacity": typed("0") } };
    const { equipment, problems } = readEquipment(empty, DEFAULT_PREFERENCES);
    expect(equipment).toBeNull();
    expect(problems).toEqual({ "kettle.capacity": "Kettle volume 0.0 L is outside 0.5 L to 2000.0 L" });
  });

  it("takes a basket without a limit for one that only its volume limits", () => {
    const draft = draftOfEquipment(garageKettle, DEFAULT_PREFERENCES);
    const open = { ...draft, numbers: { ...draft.numbers, "mash.grainLimit": typed(" ") } };
    expect(readEquipment(open, DEFAULT_PREFERENCES).equipment?.mash.grainLimit).toBeNull();
  });
});

describe("derivedFigures", () => {
  const power = (supply: number): number | null | undefined => {
    const kettle = { ...garageKettle.kettle, ratedVoltage: volts(240), supplyVoltage: volts(supply) };
    return derivedFigures({ ...garageKettle, kettle }, DEFAULT_PREFERENCES)[0]?.value;
  };

  it("gives 2296 W from an element of 2500 W at 240 V on a supply of 230 V", () => {
    // Ohm's law by hand: 2500 × (230 / 240)² = 2296.0.
    expect(power(230)).toBeCloseTo(2296, 0);
  });

  it("quarters the power at half the voltage", () => {
    expect((power(240) ?? 0) / (power(120) ?? 1)).toBeCloseTo(4, 9);
  });
});
