import { describe, expect, it } from "vitest";
import { fraction, grams, kilograms, kilogramsPerLitre } from "@/lib/calc/units";
import { adaptWith, NO_CHOICE, withLots } from "@/lib/model/adaptation";
import { equipmentInput } from "@/lib/model/equipment";
import { newLot, LOT_UNIT, type IngredientLot } from "@/lib/model/ingredient-lot";
import type { LotFigures } from "@/lib/model/lot";
import { isOfRow, ONE_PACK, rowNeeds, takeFromLots, type RowNeed } from "@/lib/model/lot-need";
import { recipeContent } from "@/lib/model/recipe-content";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { rowsWithLots } from "@/lib/model/row-lots";
import { sampleContent, sampleEquipment } from "../support/sample-recipe";
import { hopLot } from "../support/lots";

const content = recipeContent.parse(sampleContent());
const equipment = equipmentInput.parse(sampleEquipment());

const LOT = "11111111-1111-4111-8111-111111111111";
const OTHER = "22222222-2222-4222-8222-222222222222";

function solved(path: string, lot: LotFigures) {
  const written = recipeIntention(content);
  if (written === null) throw new Error("the sample recipe does not brew");
  const choice = { ...NO_CHOICE, lots: { [path]: LOT } };
  const adapted = adaptWith({ content, written, equipment, choice, lots: new Map([[LOT, lot]]) });
  const plain = adaptWith({ content, written, equipment, choice: NO_CHOICE, lots: new Map() });
  if (adapted.chosen === null || plain.chosen === null)
    throw new Error("the sample recipe does not fit its own kettle");
  return { lot: adapted.chosen, plain: plain.chosen };
}

const analysis = { extract: null, moisture: null, colour: null };

describe("a sheet that is solved with a lot", () => {
  // IBU = grams × alpha × utilisation / litres, at one bitterness.
  it("takes twice the grams of a hop with half the alpha acids, for the same bitterness", () => {
    const alpha = content.recipe.hops[0]?.alpha ?? NaN;
    const { lot, plain } = solved("hops.0", { kind: "hop", figures: { alpha: fraction(alpha / 2) } });
    expect((lot.recipe.hops[0]?.grams ?? NaN) / (plain.recipe.hops[0]?.grams ?? NaN)).toBeCloseTo(2, 1);
    expect(lot.ledger.hops[0]?.ibu).toBeCloseTo(plain.ledger.hops[0]?.ibu ?? NaN, 2);
    expect(lot.recipe.hops[0]?.alpha).toBe(alpha / 2);
  });

  // Extract weighed out = kg × (1 − moisture) × extract, and what reaches the fermenter is that times the efficiency.
  it("takes more of a moister malt, for the same extract in the fermenter", () => {
    const moisture = content.recipe.fermentables[0]?.moisture ?? NaN;
    const wet = fraction(moisture + 0.04);
    const { lot, plain } = solved("fermentables.0", { kind: "fermentable", figures: { ...analysis, moisture: wet } });
    const dry = ({ recipe }: typeof lot): number =>
      recipe.fermentables.reduce((sum, row) => sum + row.kg * (1 - row.moisture) * row.extract, 0);
    const reached = (of: typeof lot): number => dry(of) * (of.ledger.quantities["fermenter.efficiency"] ?? NaN);
    expect(lot.recipe.fermentables[0]?.kg).toBeGreaterThan((plain.recipe.fermentables[0]?.kg ?? NaN) * 1.03);
    expect(reached(lot) / reached(plain)).toBeCloseTo(1, 4);
    expect(lot.ledger.quantities["fermenter.originalExtract"]).toBeCloseTo(
      plain.ledger.quantities["fermenter.originalExtract"] ?? NaN,
      3,
    );
  });

  it("becomes the lot's own ingredient where that is another one, and keeps its figures unknown to the lot", () => {
    const stock = { name: "Perle", alpha: fraction(0.065) };
    const { lot, plain } = solved("hops.0", { kind: "hop", figures: { alpha: null }, stock });
    expect(lot.recipe.hops[0]).toMatchObject({ name: "Perle", alpha: 0.065, use: plain.recipe.hops[0]?.use });
    expect(lot.ledger.hops[0]?.ibu).toBeCloseTo(plain.ledger.hops[0]?.ibu ?? NaN, 2);
  });

  // The acid is solved for a pH of the mash, so its moles stay: mL × strength × density.
  it("takes more of a weaker acid, for the same acid in the mash", () => {
    const weak = { massFraction: fraction(0.4), density: kilogramsPerLitre(1.09) };
    const { lot, plain } = solved("acid", { kind: "acid", figures: weak });
    const acidG = ({ recipe: { water } }: typeof lot): number =>
      (water.acid?.ml ?? NaN) * (water.acid?.solution.massFraction ?? NaN) * (water.acid?.solution.density ?? NaN);
    expect(lot.recipe.water.acid?.solution).toMatchObject(weak);
    expect(acidG(lot) / acidG(plain)).toBeCloseTo(1, 3);
    expect(lot.ledger.quantities["mash.ph"]).toBeCloseTo(plain.ledger.quantities["mash.ph"] ?? NaN, 3);
  });

  it("keeps the strength of the recipe where a bottle does not say all of its own", () => {
    const { lot, plain } = solved("acid", { kind: "acid", figures: { massFraction: fraction(0.4), density: null } });
    expect(lot.recipe.water.acid).toEqual(plain.recipe.water.acid);
  });

  it("keeps the acid of a recipe that says its amount, in another amount of a weaker solution", () => {
    const figures = { massFraction: fraction(0.4), density: kilogramsPerLitre(1.19) };
    const choice = { ...NO_CHOICE, lots: { acid: LOT } };
    const { water } = withLots(content.recipe, choice, new Map([[LOT, { kind: "acid", figures }]]));
    // 4 mL of 80 % are 8 mL of 40 % of the same density.
    expect(water.acid?.ml).toBeCloseTo(8, 9);
  });

  it("keeps the name and figures of its row where the lot's analysis says nothing", () => {
    const name = content.recipe.hops[0]?.name ?? "";
    const stock = { name: ` ${name.toUpperCase()} `, alpha: fraction(0.2) };
    const { lot, plain } = solved("hops.0", { kind: "hop", figures: { alpha: null }, stock });
    expect(lot.recipe.hops[0]).toEqual(plain.recipe.hops[0]);
  });
});

describe("rowNeeds", () => {
  it("names fermentables, hops, yeast, salts and acid, each in the unit of its lots", () => {
    const needs = rowNeeds(content.recipe, { cells: 180, cellsInPack: 77.5 });
    const of = (path: string) => needs.find((each) => each.path === path);
    expect(of("fermentables.0")?.unit).toBe("kg");
    expect(of("yeast")).toMatchObject({ kind: "yeast", name: "Ale yeast", amount: 3, unit: "pcs" });
    expect(of("salts.gypsum")).toMatchObject({ kind: "salt", name: "Gypsum", amount: 4, unit: "g" });
    expect(of("salts.chalk")).toBeUndefined();
    expect(of("acid")).toMatchObject({ kind: "acid", name: "lactic acid", amount: 4, unit: "mL" });
    expect(rowNeeds(content.recipe, ONE_PACK).find(({ path }) => path === "yeast")?.amount).toBe(1);
  });

  it("knows a bottle of acid by the acid, whatever its strength, and nothing else", () => {
    const acid = { kind: "acid", name: "lactic acid" } as const;
    expect(isOfRow(acid, "Lactic acid 80 %")).toBe(true);
    expect(isOfRow(acid, "Lactic acidulant")).toBe(false);
    expect(isOfRow(acid, "Phosphoric acid 75 %")).toBe(false);
    expect(isOfRow({ kind: "salt", name: "Gypsum" }, "gypsum ")).toBe(true);
  });
});

const need = (path: string, amount: number): RowNeed => ({ path, kind: "hop", name: "Cascade", amount, unit: "g" });

describe("takeFromLots", () => {
  it("gives the rows their turn, and what a lot lacks is told of the row that it lacks", () => {
    const needs = [need("hops.0", 60), need("hops.1", 50), need("hops.2", 10)];
    const lots = { "hops.0": LOT, "hops.1": LOT, "hops.2": OTHER };
    const takes = takeFromLots(
      needs,
      lots,
      new Map([
        [LOT, 100],
        [OTHER, 10],
      ]),
    );
    expect(takes.map(({ path, taken, short }) => [path, taken, short])).toEqual([
      ["hops.0", 60, 0],
      ["hops.1", 40, 10],
      ["hops.2", 10, 0],
    ]);
  });

  it("counts in thousandths, where a third of a kilogram three times leaves nothing over", () => {
    const needs = [need("hops.0", 0.1), need("hops.1", 0.2)];
    const takes = takeFromLots(needs, { "hops.0": LOT, "hops.1": LOT }, new Map([[LOT, 0.3]]));
    expect(takes.map(({ short }) => short)).toEqual([0, 0]);
  });

  it("leaves rows without a lot, and lots that are not there, alone", () => {
    expect(takeFromLots([need("hops.0", 10)], {}, new Map([[LOT, 5]]))).toEqual([]);
    expect(takeFromLots([need("hops.0", 10)], { "hops.0": OTHER }, new Map([[LOT, 5]]))).toEqual([]);
  });
});

function lotOf(id: string, change: object): IngredientLot {
  const { owner: _owner, ...lot } = newLot.parse(hopLot(change));
  const unit = LOT_UNIT[lot.what.kind];
  return { id, owner: null, ...lot, unit, lockVersion: 1, isArchived: false, mayWrite: true };
}

describe("the rows of a sheet with what is on the shelf", () => {
  const name = content.recipe.hops[0]?.name ?? "";
  const figures: LotFigures = { kind: "hop", figures: { alpha: fraction(0.05) } };
  const offers = [
    { lot: lotOf(LOT, { name, onHand: 1 }), figures },
    { lot: lotOf(OTHER, { name: "Perle" }), figures: { ...figures, stock: { name: "Perle", alpha: fraction(0.07) } } },
  ];

  it("offer lots of the ingredient first, and others only where their ingredient is known", () => {
    const { recipe } = content;
    const rows = rowsWithLots({
      cells: null,
      written: recipe,
      recipe,
      generic: recipe,
      choice: { "hops.0": LOT },
      offers,
    });
    const row = rows.find(({ path }) => path === "hops.0");
    expect(row?.matching.map(({ lot }) => lot.id)).toEqual([LOT]);
    expect(row?.others.map(({ lot }) => lot.id)).toEqual([OTHER]);
    expect(row?.chosen?.lot.id).toBe(LOT);
    expect(row?.short).toBeCloseTo((recipe.hops[0]?.grams ?? NaN) - 1, 3);
    expect(rows.find(({ kind }) => kind === "fermentable")).toMatchObject({ matching: [], others: [], short: null });
  });

  it("know the ingredient that was written where a lot of another one stands in for it", () => {
    const { recipe } = content;
    const hops = recipe.hops.map((hop, i) => (i === 0 ? { ...hop, name: "Perle", grams: grams(40) } : hop));
    const solvedRecipe = {
      ...recipe,
      hops,
      fermentables: recipe.fermentables.map((row) => ({ ...row, kg: kilograms(1) })),
    };
    const rows = rowsWithLots({
      cells: null,
      ...{ written: recipe, recipe: solvedRecipe, generic: recipe, offers },
      choice: { "hops.0": OTHER },
    });
    const row = rows.find(({ path }) => path === "hops.0");
    expect(row).toMatchObject({ writtenName: name, name: "Perle", amount: 40, generic: recipe.hops[0]?.grams });
    expect(row?.chosen?.lot.id).toBe(OTHER);
  });
});
