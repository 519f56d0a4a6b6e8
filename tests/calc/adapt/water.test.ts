import { describe, expect, it } from "vitest";
import { adapt, intentionOf } from "@/lib/calc/adapt";
import type { Equipment, Recipe } from "@/lib/calc/ledger";
import { litres, milligramsPerLitre, millilitres } from "@/lib/calc/units";
import { ACID_SOLUTIONS, type Ions } from "@/lib/calc/water";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { garageKettle, paleAle, sameDay } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";

const intention = intentionOf({ recipe: paleAle, ledger: brewed() });

function adapted(a: { readonly recipe?: Recipe; readonly equipment?: Equipment; readonly source?: Ions }) {
  const outcome = adapt({
    intention:
      a.recipe === undefined ? intention : intentionOf({ recipe: a.recipe, ledger: brewed({ recipe: a.recipe }) }),
    equipment: a.equipment ?? garageKettle,
    ambient: sameDay,
    hold: { intoFermenter: null },
    ...(a.source === undefined ? {} : { source: a.source }),
  });
  if (!outcome.ok) throw new Error("does not fit");
  return outcome;
}

const waterWith = (ions: Partial<Record<keyof Ions, number>>): Ions => {
  const all = { calcium: 0, magnesium: 0, sodium: 0, sulfate: 0, chloride: 0, bicarbonate: 0, ...ions };
  return {
    calcium: milligramsPerLitre(all.calcium),
    magnesium: milligramsPerLitre(all.magnesium),
    sodium: milligramsPerLitre(all.sodium),
    sulfate: milligramsPerLitre(all.sulfate),
    chloride: milligramsPerLitre(all.chloride),
    bicarbonate: milligramsPerLitre(all.bicarbonate),
  };
};

describe("adapt to a member's own water", () => {
  it("solves the salts anew and comes within what a laboratory tells apart from distilled water", () => {
    const { recipe, residuals } = adapted({ source: waterWith({}) });
    for (const residual of Object.values(residuals.ions)) expect(Math.abs(residual)).toBeLessThan(6);
    expect(recipe.water.salts.gypsum ?? 0).toBeGreaterThan(4);
  });

  it("says how far an ion is off that no salt takes out: 300 mg/L of bicarbonate where the recipe has 110", () => {
    const { residuals, recipe } = adapted({ source: waterWith({ bicarbonate: 300 }) });
    expectWithin(residuals.ions.bicarbonate, 190, 1e-9);
    expect(recipe.water.source.bicarbonate).toBe(300);
    for (const weight of Object.values(recipe.water.salts)) expect(weight).toBeGreaterThan(0);
  });

  it("keeps the dose of each salt in the water of the recipe, to the last digit", () => {
    const { residuals } = adapted({});
    for (const residual of Object.values(residuals.ions)) expectWithin(residual, 0, 1e-9);
  });
});

describe("adapt of a recipe with acid", () => {
  const sour: Recipe = {
    ...paleAle,
    water: { ...paleAle.water, acid: { solution: ACID_SOLUTIONS.lactic80, ml: millilitres(6) } },
  };

  it("gives back the acid on the kettle that it was written for (identity)", () => {
    const { recipe, residuals } = adapted({ recipe: sour });
    expectWithin(recipe.water.acid?.ml ?? 0, 6, 1e-5);
    expectWithin(residuals.mashPh, 0, 1e-9);
  });

  it("brings a mash with all the water in it to the same pH, with more acid for its alkalinity", () => {
    const { equipment } = brewInput({ lauter: { method: "none" }, equipment: { usualBatch: litres(15) } });
    const { recipe, ledger, residuals } = adapted({ recipe: sour, equipment });
    const wanted = valueOf(brewed({ recipe: sour }), "mash.ph");
    expectWithin(valueOf(ledger, "mash.ph"), wanted, 1e-9);
    expectWithin(residuals.mashPh, 0, 1e-9);
    const perKg = (of: Recipe): number =>
      (of.water.acid?.ml ?? 0) / of.fermentables.reduce((sum, row) => sum + (row.station === "mash" ? row.kg : 0), 0);
    expect(perKg(recipe)).toBeGreaterThan(perKg(sour));
  });

  it("leaves the acid out where the mash is sour enough without, and says by how much it is off", () => {
    const { recipe, residuals } = adapted({ recipe: sour, source: waterWith({ calcium: 600, sulfate: 1440 }) });
    expect(recipe.water.acid).toBeNull();
    expect(residuals.mashPh).toBeLessThan(0);
  });
});
