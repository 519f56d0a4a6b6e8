import { describe, expect, expectTypeOf, it } from "vitest";
import type { Ambient, Equipment, Recipe } from "@/lib/calc/ledger";
import { fieldErrors } from "@/lib/model/field-errors";
import { recipeContent, type RecipeContent } from "@/lib/model/recipe-content";
import type { sampleRecipe } from "../support/sample-recipe";
import { sampleContent } from "../support/sample-recipe";

type Sample = ReturnType<typeof sampleRecipe>;

/** The messages for a sample recipe with something changed. */
function messagesFor(change: (recipe: Sample) => unknown): Readonly<Record<string, string>> {
  const content = sampleContent();
  const changed = change(content.recipe) ?? content.recipe;
  const outcome = recipeContent.safeParse({ ...content, recipe: changed });
  return outcome.success ? {} : fieldErrors(outcome.error);
}

const firstRow = (recipe: Sample, change: object) => ({
  ...recipe,
  fermentables: recipe.fermentables.map((row, index) => (index === 0 ? { ...row, ...change } : row)),
});

describe("recipeContent", () => {
  it("is what the library's types say", () => {
    expectTypeOf<RecipeContent["recipe"]>().toExtend<Recipe>();
    expectTypeOf<RecipeContent["writtenOn"]["equipment"]>().toExtend<Equipment>();
    expectTypeOf<RecipeContent["writtenOn"]["ambient"]>().toExtend<Ambient>();
  });

  it("gives back a good recipe unchanged", () => {
    expect(recipeContent.parse(sampleContent())).toEqual(sampleContent());
  });

  it("reads a revision from before the pH of the mash was computed: nothing is known of the malts, and no acid", () => {
    const content = sampleContent();
    const { acid: _acid, ...water } = content.recipe.water;
    const fermentables = content.recipe.fermentables.map(({ acidity: _acidity, ...row }) => row);
    const parsed = recipeContent.parse({ ...content, recipe: { ...content.recipe, water, fermentables } });
    expect(parsed.recipe.water.acid).toBeNull();
    expect(parsed.recipe.fermentables.map((row) => row.acidity)).toEqual([null, null]);
  });

  it("survives a round trip through JSON", () => {
    const parsed = recipeContent.parse(sampleContent());
    expect(recipeContent.parse(JSON.parse(JSON.stringify(parsed)))).toEqual(parsed);
  });

  it.each([
    ["empty", "", "Amount is empty; it takes a number from 0.001 to 5000 kg"],
    ["nothing", 0, "Amount 0 kg is outside 0.001 to 5000 kg"],
    ["negative", "-4.5", "Amount -4.5 kg is outside 0.001 to 5000 kg"],
    ["absurd", 1e12, "Amount 1000000000000 kg is outside 0.001 to 5000 kg"],
    ["not a number", "some", "Amount “some” is not a number; it takes 0.001 to 5000 kg"],
  ])("refuses an amount of malt that is %s", (_what, kg, message) => {
    expect(messagesFor((recipe) => firstRow(recipe, { kg }))).toEqual({ "recipe.fermentables.0.kg": message });
  });

  it("refuses a recipe without malt", () => {
    expect(messagesFor((recipe) => ({ ...recipe, fermentables: [] }))).toEqual({
      "recipe.fermentables": "A recipe needs at least one fermentable: malt, sugar or malt extract",
    });
  });

  it.each([
    ["fermentables", 41, "A recipe has at most 40 fermentables"],
    ["hops", 41, "A recipe has at most 40 hop additions"],
    ["mash", 13, "A recipe has at most 12 mash steps"],
  ] as const)("refuses too many %s", (list, count, message) => {
    const grown = (recipe: Sample) => ({ ...recipe, [list]: Array.from({ length: count }, () => recipe[list][0]) });
    expect(messagesFor(grown)).toEqual({ [`recipe.${list}`]: message });
  });

  it.each([
    [
      "water after the boil that is all the beer",
      (recipe: Sample) => ({ ...recipe, topUp: 21 }),
      { "recipe.topUp": "Water after the boil 21 L is not less than the 21 L wanted" },
    ],
    [
      "grain without a mash step",
      (recipe: Sample) => ({ ...recipe, mash: [] }),
      { "recipe.mash": "A recipe with grain in the mash needs a mash step" },
    ],
    [
      "a hop that boils longer than the wort",
      (recipe: Sample) => ({ ...recipe, boil: 45 }),
      { "recipe.hops.0.minutes": "Bitter hop goes in 60 min before the end of a boil of 45 min" },
    ],
    [
      "a hop for a stand that there is not",
      (recipe: Sample) => ({ ...recipe, stand: null }),
      { "recipe.hops.1.use": "Aroma hop is for a hop stand, and there is none" },
    ],
    [
      "malt in the kettle",
      (recipe: Sample) => firstRow(recipe, { station: "kettle" }),
      { "recipe.fermentables.0.station": "Malt goes into the mash" },
    ],
    [
      "attenuation the wrong way round",
      (recipe: Sample) => ({ ...recipe, yeast: { ...recipe.yeast, attenuationLow: 0.9 } }),
      { "recipe.yeast.attenuationLow": "Attenuation, low is above attenuation, high" },
    ],
  ])("refuses %s", (_what, change, messages) => {
    expect(messagesFor(change)).toEqual(messages);
  });

  it("refuses fields that it does not know", () => {
    expect(recipeContent.safeParse({ ...sampleContent(), ownerId: "someone" }).success).toBe(false);
    expect(messagesFor((recipe) => firstRow(recipe, { price: 3 }))).not.toEqual({});
  });

  it("names every wrong field at once", () => {
    const messages = messagesFor((recipe) => ({ ...firstRow(recipe, { kg: "", colour: -1 }), boil: "long" }));
    expect(Object.keys(messages).sort()).toEqual([
      "recipe.boil",
      "recipe.fermentables.0.colour",
      "recipe.fermentables.0.kg",
    ]);
  });
});
