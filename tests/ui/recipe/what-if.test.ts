import { describe, expect, it } from "vitest";
import { brew, type Ambient, type Equipment, type QuantityId, type Recipe } from "@/lib/calc/ledger";
import { celsius, fraction, kilograms, kilogramsPerHour, litres, metres, minutes } from "@/lib/calc/units";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { draftOfEquipment } from "@/lib/ui/equipment/equipment-draft";
import { draftFromContent } from "@/lib/ui/recipe/draft-from-content";
import { mostInfluential, stepped, tried, withTexts, type Trial } from "@/lib/ui/recipe/what-if";
import { whatIfInputs, type Setting, type WhatIfInput } from "@/lib/ui/recipe/what-if-inputs";
import { garageKettle, paleAle, sameDay } from "../../support/brewing-fixtures";

const preferences = DEFAULT_PREFERENCES;
const about = (explained: QuantityId): Trial => ({ preferences, explained });

function settingOf(recipe: Recipe = paleAle, equipment: Equipment = garageKettle): Setting {
  const writtenOn = { name: equipment.name, equipment, ambient: sameDay };
  const content = { recipe, entered: {}, style: null, notes: "", writtenOn };
  return {
    draft: draftFromContent({ title: "Pale ale", content, preferences }),
    kettle: draftOfEquipment(equipment, preferences),
  };
}

function brewed(id: QuantityId, a: { recipe?: Recipe; equipment?: Equipment; ambient?: Ambient } = {}): number {
  const { recipe = paleAle, equipment = garageKettle, ambient = sameDay } = a;
  const outcome = brew({ recipe, equipment, ambient });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.ledger.quantities[id] ?? Number.NaN;
}

const setting = settingOf();
function inputOf(id: string): WhatIfInput {
  const found = whatIfInputs(setting).find((input) => input.id === id);
  if (found === undefined) throw new Error(`nothing to try is called ${id}`);
  return found;
}

/** The number after a text was typed into one input. */
function after(id: string, text: string, explained: QuantityId) {
  return tried(inputOf(id).put(setting, text), about(explained));
}

const { kettle, lauter, fermenter } = garageKettle;
const withKettle = (change: Partial<Equipment["kettle"]>): Equipment => ({
  ...garageKettle,
  kettle: { ...kettle, ...change },
});

/** Each time the same change is made in the text of a trial, and by hand in what the ledger is brewed from. */
const NUDGES: readonly (readonly [string, string, QuantityId, Parameters<typeof brewed>[1]])[] = [
  [
    "equipment.kettle.boilOff",
    "4.5",
    "kettle.preBoil",
    { equipment: withKettle({ boilOff: { ...kettle.boilOff, value: kilogramsPerHour(4.5) } }) },
  ],
  [
    "equipment.kettle.trub",
    "2.5",
    "fermenter.efficiency",
    { equipment: withKettle({ trub: { ...kettle.trub, value: litres(2.5) } }) },
  ],
  [
    "equipment.lauter.conversion",
    "88",
    "fermenter.originalExtract",
    {
      equipment: {
        ...garageKettle,
        lauter: { ...lauter, conversion: { ...lauter.conversion, value: fraction(0.88) } },
      },
    },
  ],
  [
    "equipment.fermenter.left",
    "1.5",
    "package.volume",
    { equipment: { ...garageKettle, fermenter: { ...fermenter, left: { ...fermenter.left, value: litres(1.5) } } } },
  ],
  ["equipment.altitude", "1500", "fermenter.bitterness", { equipment: { ...garageKettle, altitude: metres(1500) } }],
  ["ambient.grain", "5", "water.strike", { ambient: { ...sameDay, grain: celsius(5) } }],
  ["boil", "90", "fermenter.bitterness", { recipe: { ...paleAle, boil: minutes(90) } }],
];

describe("a trial", () => {
  it("begins with the number of the ledger", () => {
    for (const id of ["fermenter.originalExtract", "fermenter.bitterness", "kettle.preBoil"] as const) {
      expect(tried(setting, about(id))).toEqual({ ok: true, value: brewed(id) });
    }
  });

  it.each(NUDGES)("of %s at %s gives the %s that a brew with that figure has", (id, text, explained, changed) => {
    const expected = brewed(explained, changed);
    expect(expected).not.toBeCloseTo(brewed(explained), 3);
    const outcome = after(id, text, explained);
    expect(outcome.ok ? outcome.value : outcome.why).toBeCloseTo(expected, 9);
  });

  it("of a row of the grist gives what a brew with that row has", () => {
    const [first, ...others] = paleAle.fermentables;
    if (first === undefined) throw new Error("no malt");
    const row = whatIfInputs(setting).find(({ id }) => /^mashGrist\..*\.kg$/.test(id));
    const outcome = tried(row?.put(setting, "6") ?? setting, about("fermenter.originalExtract"));
    const recipe = { ...paleAle, fermentables: [{ ...first, kg: kilograms(6) }, ...others] };
    expect(outcome.ok && outcome.value).toBeCloseTo(brewed("fermenter.originalExtract", { recipe }), 9);
  });

  it("changes neither the recipe nor the kettle that it is made of", () => {
    const before = JSON.stringify(setting);
    withTexts(setting, whatIfInputs(setting), { "equipment.kettle.boilOff": "9", boil: "5" });
    expect(JSON.stringify(setting)).toBe(before);
  });

  it("of several figures is undone as one", () => {
    const inputs = whatIfInputs(setting);
    const texts = { "equipment.kettle.boilOff": "9", "ambient.grain": "5", boil: "90" };
    const trial = about("kettle.preBoil");
    expect(tried(withTexts(setting, inputs, texts), trial)).not.toEqual(tried(setting, trial));
    expect(tried(withTexts(setting, inputs, {}), trial)).toEqual(tried(setting, trial));
  });
});

describe("a figure out of its range", () => {
  it.each([
    ["equipment.kettle.boilOff", "1001", "Boil-off 1001 kg/h is outside 0 to 1000 kg/h"],
    ["equipment.lauter.conversion", "20", "Conversion 20.0 % is outside 30.0 % to 100.0 %"],
    ["ambient.grain", "60", "Grain temperature 60.0 °C is outside −20.0 °C to 50.0 °C"],
    ["equipment.altitude", "high", /^Altitude “high” is not a number/],
  ])("%s at %s is told with field, value and range", (id, text, message) => {
    const outcome = after(id, text, "kettle.preBoil");
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.why).toMatch(message);
  });

  it("is told where it only contradicts another figure of the kettle", () => {
    const outcome = after("equipment.kettle.headspace", String(kettle.capacity + 1), "kettle.preBoil");
    expect(outcome).toEqual({ ok: false, why: "Kettle headspace leaves no room in the kettle" });
  });

  it("is not reached by pressing", () => {
    const conversion = inputOf("equipment.lauter.conversion");
    expect(stepped(conversion, "100", 1, preferences)).toBeNull();
    expect(stepped(conversion, "99", 1, preferences)).toBe("100");
    expect(stepped(inputOf("ambient.grain"), "-20", -1, preferences)).toBeNull();
  });
});

describe("what is offered to try", () => {
  it("has inputs of the recipe, of the day and of the kettle, of each at most six", () => {
    const groups = mostInfluential(setting, about("water.heatingTime")).map(({ group }) => group);
    expect(new Set(groups)).toEqual(new Set(["recipe", "day", "kettle"]));
    for (const group of ["recipe", "day", "kettle"]) {
      expect(groups.filter((one) => one === group).length).toBeLessThanOrEqual(6);
    }
  });

  it("has only what moves the number: no wire and no hop moves the volume before the boil by itself", () => {
    const offered = mostInfluential(setting, about("kettle.preBoil")).map(({ id }) => id);
    expect(offered).toContain("equipment.kettle.boilOff");
    expect(offered).not.toContain("equipment.kettle.supplyVoltage");
  });
});
