import { describe, expect, it } from "vitest";
import type { Recipe } from "@/lib/calc/ledger";
import { litresPerKilogram, milliequivalentsPerKilogramPh, milligramsPerLitre, fraction, ph } from "@/lib/calc/units";
import { brewed, valueOf } from "../../support/brewed";
import { malt, paleAle } from "../../support/brewing-fixtures";

const none = milligramsPerLitre(0);
const distilled: Recipe["water"] = {
  source: { calcium: none, magnesium: none, sodium: none, sulfate: none, chloride: none, bicarbonate: none },
  salts: {},
  acid: null,
};

const acidity = (distilledWaterPh: number, buffering: number) => ({
  distilledWaterPh: ph(distilledWaterPh),
  buffering: milliequivalentsPerKilogramPh(buffering),
  lacticFraction: fraction(0),
});

const grist = (...rows: readonly (readonly [kg: number, ph: number, buffering: number])[]): Recipe["fermentables"] =>
  rows.map(([kg, own, buffering]) => ({
    ...malt("Malt", kg, 0.8, 0.04, 6),
    acidity: acidity(own, buffering),
  }));

const phOf = (changes: Partial<Recipe>): number => valueOf(brewed({ recipe: { ...paleAle, ...changes } }), "mash.ph");

describe("the pH of the mash in the ledger", () => {
  it("is that of the malt alone in distilled water (definition)", () => {
    expect(phOf({ water: distilled, fermentables: grist([5, 5.75, 38]) })).toBeCloseTo(5.75, 3);
  });

  it("is the mean of two malts, weighed by mass and buffering: (4 × 38 × 5.75 + 1 × 50 × 4.8) / 202 = 5.515", () => {
    const two = grist([4, 5.75, 38], [1, 4.8, 50]);
    expect(phOf({ water: distilled, fermentables: two })).toBeCloseTo(5.515, 3);
  });

  it("rises with the alkalinity of more water to the grain", () => {
    const thick = phOf({ thickness: litresPerKilogram(2.5) });
    expect(phOf({ thickness: litresPerKilogram(4) })).toBeGreaterThan(thick);
  });

  it("falls with a dark malt of which only kind and colour are known", () => {
    const pale = phOf({ fermentables: [malt("Pale malt", 5, 0.8, 0.04, 6)] });
    const dark = phOf({ fermentables: [malt("Pale malt", 4.5, 0.8, 0.04, 6), malt("Roast", 0.5, 0.7, 0.03, 1300)] });
    expect(dark).toBeLessThan(pale - 0.05);
  });

  it("is not there when nothing is mashed", () => {
    const sugar = paleAle.fermentables.filter((row) => row.station === "kettle");
    const ledger = brewed({ recipe: { ...paleAle, fermentables: sugar } });
    expect(ledger.quantities["mash.ph"]).toBeNull();
    expect(ledger.quantities["mash.conversion"]).toBeNull();
  });
});
