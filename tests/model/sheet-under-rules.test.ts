import { describe, expect, it } from "vitest";
import { equipmentInput } from "@/lib/model/equipment";
import { NO_CHOICE } from "@/lib/model/adaptation";
import { recipeContent } from "@/lib/model/recipe-content";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { ruleResults } from "@/lib/model/rule-results";
import { AS_WRITTEN, type SharedBrewRules } from "@/lib/model/shared-brew-rules";
import { sheetUnderRules, type SheetTask } from "@/lib/model/sheet-under-rules";
import { waterTreatment } from "@/lib/model/recipe-rows";
import { sampleContent, sampleEquipment } from "../support/sample-recipe";

const content = recipeContent.parse(sampleContent());
const written = recipeIntention(content);
if (written === null) throw new Error("the sample recipe does not brew");

/** Half the size, boils off harder and washes the grain less well: every amount differs. */
const sample = sampleEquipment();
const small = equipmentInput.parse({
  ...sample,
  name: "Small kettle",
  kettle: { ...sample.kettle, capacity: 26, boilOff: { ...sample.kettle.boilOff, value: 2.6 } },
  mash: { ...sample.mash, capacity: 22 },
  lauter: { ...sample.lauter, method: "none", absorption: { ...sample.lauter.absorption, value: 1 } },
  usualBatch: 12,
});

const LOOSE: SharedBrewRules = {
  ...AS_WRITTEN,
  originalExtract: false,
  bitterness: false,
  colour: false,
  mashPh: false,
};

function sheet(rules: SharedBrewRules, more: Partial<SheetTask> = {}) {
  const task = { content, written: written ?? never(), rules, equipment: small, choice: NO_CHOICE, lots: new Map() };
  const { outcome } = sheetUnderRules({ ...task, water: null, yeast: "", ...more });
  if (!outcome.ok) throw new Error(`does not fit: ${outcome.reasons.map(({ id }) => id).join(", ")}`);
  const results = ruleResults({ rules, written: task.written.ledger, here: outcome.ledger });
  return { ...outcome, result: (rule: string) => results.find((each) => each.rule === rule) };
}

function never(): never {
  throw new Error("unreachable");
}

const kgs = ({ fermentables }: typeof content.recipe) => fermentables.map(({ kg }) => kg);
const weights = ({ hops }: typeof content.recipe) => hops.map(({ grams }) => grams);

function expectScaled(here: readonly number[], from: readonly number[], scale: number): void {
  expect(here).toHaveLength(from.length);
  here.forEach((amount, i) => expect(amount / ((from[i] ?? 0) * scale)).toBeCloseTo(1, 5));
}

describe("a plan that holds nothing", () => {
  // 12 L of a recipe for 21 L: every amount is the twelve twenty-firsts of the written one.
  it("gives malt and hops by the litre as written", () => {
    const { recipe } = sheet(LOOSE);
    expect(recipe.intoFermenter).toBe(12);
    expectScaled(kgs(recipe), kgs(content.recipe), 12 / 21);
    expectScaled(weights(recipe), weights(content.recipe), 12 / 21);
  });

  it("gives acid by the litre of mash water as written", () => {
    const { recipe, ledger } = sheet(LOOSE);
    const dose = (content.recipe.water.acid?.ml ?? 0) / (written.ledger.quantities["water.mash"] ?? 0);
    expect((recipe.water.acid?.ml ?? 0) / (ledger.quantities["water.mash"] ?? 0) / dose).toBeCloseTo(1, 3);
  });

  it("says of no figure that it is reached or missed", () => {
    const { result } = sheet(LOOSE);
    for (const rule of ["volume", "originalExtract", "bitterness", "colour", "mashPh"]) {
      expect(result(rule), rule).toMatchObject({ isHeld: false, isReached: null });
    }
    // A kettle that boils off more and leaves more in the grain gives another beer from the same malt by the litre.
    expect(result("originalExtract")?.here).not.toBeCloseTo(result("originalExtract")?.wanted ?? 0, 1);
  });
});

describe("a plan that holds a figure", () => {
  it("reaches all of them on another kettle when it holds all", () => {
    const { result } = sheet(AS_WRITTEN);
    for (const rule of ["originalExtract", "bitterness", "colour", "mashPh"]) {
      expect(result(rule), rule).toMatchObject({ isHeld: true, isReached: true });
    }
  });

  it("gives everybody the same volume", () => {
    const { recipe, result } = sheet({ ...AS_WRITTEN, volume: true }, { equipment: content.writtenOn.equipment });
    expect(recipe.intoFermenter).toBe(21);
    expect(result("volume")).toMatchObject({ isHeld: true, isReached: true });
    expect(result("volume")?.wanted).toBeCloseTo(21, 9);
  });

  it("leaves the hops by the litre as written where only their bitterness is open", () => {
    const { recipe, result } = sheet({ ...AS_WRITTEN, bitterness: false });
    expectScaled(weights(recipe), weights(content.recipe), 12 / 21);
    expect(result("originalExtract")).toMatchObject({ isReached: true });
  });

  it("leaves the malts in proportion where only the colour is open", () => {
    const { recipe, result } = sheet({ ...AS_WRITTEN, colour: false });
    const [pale = 0, crystal = 0] = kgs(recipe);
    // The hops are weighed anew, and take a little wort with them: to a part in ten thousand.
    expect(pale / crystal / (4.5 / 0.3)).toBeCloseTo(1, 4);
    expect(result("originalExtract")).toMatchObject({ isReached: true });
    expect(result("colour")?.isReached).toBeNull();
  });

  it("is told as missed where the recipe goes another way", () => {
    const here = { quantities: { ...written.ledger.quantities, "fermenter.colour": 30 } };
    const results = ruleResults({ rules: AS_WRITTEN, written: written.ledger, here: { ...written.ledger, ...here } });
    const missed = results.filter(({ isReached }) => isReached === false);
    expect(missed.map(({ rule, here: reached }) => [rule, reached])).toEqual([["colour", 30]]);
  });
});

describe("water", () => {
  // Gypsum brings 40.08 of calcium with 96.06 of sulfate, so this is the recipe's water before 43 mg/L of it.
  const softer = { ...content.recipe.water.source, calcium: 30, sulfate: 30 - 10 * (96.06 / 40.08) };
  const own = waterTreatment.parse({ source: softer, salts: {}, acid: null }).source;

  it("that is the same for all is reached from one’s own with more of the salt", () => {
    const { recipe, result, ledger } = sheet({ ...AS_WRITTEN, water: "same treated water" }, { water: own });
    expect(recipe.water.source).toEqual(own);
    expect(result("water")).toMatchObject({ quantity: "water.calcium", isReached: true });
    const litres = (ledger.quantities["water.mash"] ?? 0) + (ledger.quantities["water.sparge"] ?? 0);
    const writtenDose =
      4 / ((written.ledger.quantities["water.mash"] ?? 0) + (written.ledger.quantities["water.sparge"] ?? 0));
    // 172.17 g of gypsum hold 40.08 g of calcium: 10 mg/L take 0.04296 g/L.
    expect((recipe.water.salts.gypsum ?? 0) / litres).toBeCloseTo(writtenDose + 0.04296, 2);
  });

  it("that is everybody’s own is left as it is", () => {
    const { recipe, ledger, result } = sheet({ ...AS_WRITTEN, water: "own water" }, { water: own });
    expect(recipe.water).toMatchObject({ source: own, salts: {} });
    expect(ledger.quantities["water.calcium"]).toBeCloseTo(30, 6);
    expect(result("water")).toMatchObject({ isHeld: false, isReached: null });
    // The pH is held all the same, with more or less acid.
    expect(result("mashPh")).toMatchObject({ isReached: true });
  });
});

describe("yeast", () => {
  it("of one’s own stands in the sheet only where the plan leaves it open", () => {
    expect(sheet(AS_WRITTEN, { yeast: "House culture" }).recipe.yeast.name).toBe("Ale yeast");
    const open = { ...AS_WRITTEN, yeast: { same: false, lot: "" } };
    expect(sheet(open, { yeast: "House culture" }).recipe.yeast.name).toBe("House culture");
    expect(sheet(open).recipe.yeast.name).toBe("Ale yeast");
  });
});
