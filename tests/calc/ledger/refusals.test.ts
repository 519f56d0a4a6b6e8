import { describe, expect, it } from "vitest";
import { withNumber } from "@/lib/calc/explain/functions/explain-function";
import { brew, brewWithWater, costOf, mashCurveOf, stationAccounts } from "@/lib/calc/ledger";
import { watts } from "@/lib/calc/units";
import { brewed, brewInput } from "../../support/brewed";
import { fullRecipe } from "../../support/full-recipe";

/** The fixture with everything that a brew can state. */
const FULL = brewInput({
  recipe: fullRecipe,
  lauter: { spargeHeater: watts(1800) },
});

const withValue = <T>(of: T, at: string, value: number): T => withNumber([of], `0.${at}`, value)[0] as T;

/** One number of each part, a value that it cannot have, and how the refusal begins. */
const IMPOSSIBLE: readonly (readonly [at: string, value: number, message: string])[] = [
  ["recipe.intoFermenter", 0.0009, "volume into the fermenter 0.0009 L is outside 0.001 to 100000 L"],
  ["recipe.topUp", -1, "water after the boil -1 L"],
  ["recipe.thickness", 20.1, "mash thickness 20.1 L/kg is outside 0 to 20 L/kg"],
  ["recipe.mashes", 3, "number of mashes 3 is outside 1 to 2"],
  ["recipe.mashes", 1.5, "number of mashes 1.5 is outside 1 to 2"],
  ["recipe.mashes", 1e12, "number of mashes 1000000000000 is outside 1 to 2"],
  ["recipe.boil", 10_081, "boil 10081 min is outside 0 to 10080 min"],
  ["recipe.mash.1.celsius", 101, "mash temperature 101 °C is outside 0 to 100 °C"],
  ["recipe.mash.0.minutes", -1, "length of a rest -1 min"],
  ["recipe.stand.celsius", 101, "stand temperature 101 °C"],
  ["recipe.fermentables.3.kg", -0.1, "fermentable -0.1 kg"],
  ["recipe.fermentables.0.colour", 3901, "colour of a fermentable 3901 EBC is outside 0 to 3900 EBC"],
  ["recipe.fermentables.3.fermentability", 1.1, "fermentability 1.1"],
  ["recipe.fermentables.2.acidity.distilledWaterPh", 2.9, "distilled-water pH of a malt 2.9 pH is outside 3 to 8 pH"],
  ["recipe.hops.2.alpha", 1.01, "alpha acids 1.01"],
  ["recipe.water.source.sodium", 10_001, "sodium 10001 mg/L"],
  ["recipe.water.salts.gypsum", -1, "salt -1 g"],
  ["recipe.water.acid.ml", -1, "acid in the mash water -1 mL"],
  ["recipe.yeast.pitch", 11, "pitch rate 11"],
  ["recipe.packaging.rated", 0, "carbonation that the container is made for 0 volumes"],
  ["equipment.usualBatch", 0, "usual batch 0 L"],
  ["equipment.hopAbsorption.value", 21, "wort held by the hops 21 L/kg"],
  ["equipment.kettle.capacity", 0, "kettle volume 0 L"],
  ["equipment.kettle.heatShare.value", 0, "share of the power that reaches the liquid 0 is outside 0.01 to 1"],
  [
    "equipment.kettle.heatShare.sd",
    1.1,
    "share of the power that reaches the liquid, uncertainty 1.1 is outside 0 to 1",
  ],
  ["equipment.kettle.boilOff.sd", -0.1, "boil-off, uncertainty -0.1 kg/h is outside 0 to 10000 kg/h"],
  ["equipment.mash.thickest", 0.4, "thickest mash 0.4 L/kg"],
  ["equipment.lauter.spargeHeater", -1, "power of the sparge-water heater -1 W"],
  ["equipment.lauter.conversion.value", 0.009, "conversion 0.009 is outside 0.01 to 1"],
  ["equipment.chiller.coolant", 61, "coolant temperature 61 °C"],
  ["equipment.chiller.conductance.value", -1, "heat transfer of the chiller -1 W/K"],
  ["equipment.fermenter.capacity", 0, "fermenter volume 0 L"],
  ["equipment.fermenter.left.value", -1, "beer left with the yeast -1 L"],
  ["ambient.humidity", 1.1, "relative humidity 1.1"],
];

const WATERS = { mashWaterKg: 15.4, spargeKg: 15 };

describe("a brew with a number that cannot be", () => {
  it.each(IMPOSSIBLE)("is refused before anything is computed: %s %d", (at, value, message) => {
    expect(() => brew(withValue(FULL, at, value))).toThrow(message);
    expect(() => brewWithWater({ ...withValue(FULL, at, value), ...WATERS })).toThrow(message);
  });

  it.each(IMPOSSIBLE)("is refused where the number is none: %s", (at) => {
    expect(() => brew(withValue(FULL, at, NaN))).toThrow(/ NaN/);
  });

  it("is none where an uncertainty is nothing, or as wide as the range", () => {
    for (const sd of [0, 1]) expect(brew(withValue(FULL, "equipment.kettle.heatShare.sd", sd)).ok).toBe(true);
  });

  it("leaves out what a brew does not have", () => {
    const plain = brewInput({ recipe: { stand: null, thickness: null } });
    expect(
      brew({ ...plain, equipment: { ...plain.equipment, mash: { ...plain.equipment.mash, grainLimit: null } } }).ok,
    ).toBe(true);
  });
});

describe("water that was measured out", () => {
  it.each([
    ["mashWaterKg", "mash water"],
    ["spargeKg", "sparge water"],
  ])("is refused below nothing and beyond the range: %s", (at, label) => {
    for (const value of [-1e-6, 100_001, NaN]) {
      expect(() => brewWithWater(withValue({ ...FULL, ...WATERS }, at, value))).toThrow(label);
    }
  });
});

describe("what reads a ledger", () => {
  const ledger = brewed();
  const prices = { fermentables: [], hops: [], yeast: null, kilowattHour: null, cubicMetreOfWater: null };

  it("refuses a recipe or a day that cannot be", () => {
    const { recipe, ambient } = FULL;
    const bad = withValue(recipe, "hops.0.grams", -1);
    expect(() => costOf({ ledger, recipe: bad, prices })).toThrow("hop addition -1 g");
    expect(() => stationAccounts({ ledger, recipe: bad, ambient })).toThrow("hop addition -1 g");
    const cold = withValue(ambient, "tapWater", -1);
    expect(() => stationAccounts({ ledger, recipe, ambient: cold })).toThrow("tap water temperature -1 °C");
  });

  it("refuses a phase of the mash that is no time or no temperature, and only of the mash", () => {
    const { phases } = ledger;
    const rest = phases.findIndex(({ name }) => name === "rest");
    for (const [field, value, message] of [
      ["minutes", -1, "length of a phase -1 min is outside 0 to 10000000 min"],
      ["fromC", 131, "temperature of a phase 131 °C is outside -30 to 130 °C"],
      ["toC", -31, "temperature of a phase -31 °C"],
    ] as const) {
      expect(() => mashCurveOf({ phases: withValue(phases, `${rest}.${field}`, value) })).toThrow(message);
    }
    expect(mashCurveOf({ phases: withValue(phases, "0.minutes", NaN) })).toEqual(mashCurveOf({ phases }));
  });
});
