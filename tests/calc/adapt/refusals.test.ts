import { describe, expect, it } from "vitest";
import { adapt, intentionOf } from "@/lib/calc/adapt";
import { withNumber } from "@/lib/calc/explain/functions/explain-function";
import { litres } from "@/lib/calc/units";
import { brewed, brewInput } from "../../support/brewed";
import { fullRecipe } from "../../support/full-recipe";

const { recipe, equipment, ambient } = brewInput({
  recipe: fullRecipe,
});
const intention = intentionOf({ recipe, ledger: brewed({ recipe }) });

const GIVEN = {
  intention: { ...intention, intoFermenter: litres(20) },
  equipment,
  ambient,
  hold: { intoFermenter: litres(20) },
  source: recipe.water.source,
};

const withValue = (at: string, value: number): typeof GIVEN => withNumber([GIVEN], `0.${at}`, value)[0] as typeof GIVEN;

const IMPOSSIBLE: readonly (readonly [at: string, value: number, message: string])[] = [
  ["intention.intoFermenter", 0.09, "volume into the fermenter 0.09 L is outside 0.1 to 100000 L"],
  ["intention.originalExtract", 35.1, "original extract 35.1 °P is outside 0 to 35 °P"],
  ["intention.colour", 3901, "colour of the beer 3901 EBC is outside 0 to 3900 EBC"],
  ["intention.mashes", 1.5, "number of mashes 1.5"],
  ["intention.mash.0.celsius", 101, "mash temperature 101 °C"],
  ["intention.fermentables.3.share", 1.01, "share of the extract 1.01 is outside 0 to 1"],
  ["intention.fermentables.1.extract", -0.1, "extract of the dry substance -0.1"],
  ["intention.fermentables.0.acidity.buffering", 201, "buffering of a malt 201"],
  ["intention.hops.0.ibu", 1001, "bitterness of an addition 1001 IBU is outside 0 to 1000 IBU"],
  ["intention.hops.3.gramsPerLitre", -1, "dose of a hop -1 g/L is outside 0 to 1000 g/L"],
  ["intention.hops.2.alpha", 1.1, "alpha acids 1.1"],
  ["intention.water.source.calcium", -1, "calcium -1 mg/L"],
  ["intention.water.ions.sulfate", -1, "sulfate -1 mg/L"],
  ["intention.water.saltsMgPerLitre.gypsum", -1, "dose of a salt -1 mg/L"],
  ["intention.water.acid.mashPh", 14.1, "mash pH 14.1 pH is outside 0 to 14 pH"],
  ["equipment.kettle.capacity", 0, "kettle volume 0 L"],
  ["ambient.air", -21, "air temperature -21 °C is outside -20 to 60 °C"],
  ["hold.intoFermenter", 0.09, "volume for everybody 0.09 L is outside 0.1 to 100000 L"],
  ["source.chloride", -1, "chloride -1 mg/L"],
];

describe("adapt", () => {
  it("takes what is possible", () => {
    expect(adapt(GIVEN).ok).toBe(true);
    const open = { ...GIVEN.intention, intoFermenter: null, water: { ...intention.water, saltsMgPerLitre: null } };
    expect(adapt({ intention: open, equipment, ambient, hold: { intoFermenter: null } }).ok).toBe(true);
  });

  it.each(IMPOSSIBLE)("refuses what is not: %s %d", (at, value, message) => {
    expect(() => adapt(withValue(at, value))).toThrow(message);
    expect(() => adapt(withValue(at, NaN))).toThrow(/ NaN/);
  });
});

describe("intentionOf", () => {
  it("refuses a recipe that cannot be", () => {
    const ledger = brewed({ recipe });
    const bad = withNumber([recipe], "0.hops.3.grams", -1)[0] as typeof recipe;
    expect(() => intentionOf({ recipe: bad, ledger })).toThrow("hop addition -1 g");
  });
});
