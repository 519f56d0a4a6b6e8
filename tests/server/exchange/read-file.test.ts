import { describe, expect, it } from "vitest";
import type { FieldReport } from "@/lib/model/exchange/report";
import { readRecipeFile } from "@/lib/server/exchange/read-file";
import { beerJsonFile, beerXmlFile, bytesOf, changedBeerJson, changedBeerXml } from "../../support/exchange-files";
import { expectWithin } from "../../support/expect-within";

const only = (bytes: Uint8Array) => {
  const [recipe] = readRecipeFile(bytes, null).recipes;
  if (recipe === undefined) throw new Error("the file has no recipe");
  return recipe;
};
const lineOf = (fields: readonly FieldReport[], field: string) => fields.find((line) => line.field === field);

describe("a BeerJSON file", () => {
  const { content, fields } = only(beerJsonFile());
  const recipe = content?.recipe;

  it("is taken in this book's units", () => {
    // 5 gal, 8 lb, 1 oz, 152 °F and 1.5 qt/lb by the exact definitions of NIST SP 811.
    expectWithin(recipe?.intoFermenter ?? 0, 18.92705892, 1e-8);
    expectWithin(recipe?.fermentables[0]?.kg ?? 0, 3.62873896, 1e-8);
    expectWithin(recipe?.hops[0]?.grams ?? 0, 28.349523125, 1e-8);
    expectWithin(recipe?.mash[0]?.celsius ?? 0, 66.6667, 1e-4);
    expectWithin(recipe?.thickness ?? 0, 3.1295265, 1e-6);
    expect(recipe?.water.source).toMatchObject({ calcium: 60, bicarbonate: 120, magnesium: 8 });
    expect(recipe?.water.salts).toEqual({ gypsum: 5 });
    expect(content?.style).toBe("11B");
  });

  it("takes the moisture of a malt from the document's own record of it", () => {
    expect(recipe?.fermentables[0]).toMatchObject({ name: "Weir malt", moisture: 0.045, extract: 0.81 });
  });

  it("takes the range of attenuation from the document's own record of the culture", () => {
    expect(recipe?.yeast).toMatchObject({ attenuationLow: 0.72, attenuationHigh: 0.78, celsius: 18 });
  });

  it("counts hop time back from the end of the boil, and of the stand that a step of it is", () => {
    expect(recipe?.stand).toEqual({ celsius: 80, minutes: 20 });
    expect(recipe?.hops.map(({ use, minutes }) => [use, minutes])).toEqual([
      ["boil", 60],
      ["stand", 15],
      ["dry", 0],
    ]);
  });

  it("says of every line where it stands and what is done with it", () => {
    const text = new TextDecoder().decode(beerJsonFile()).split("\n");
    for (const { line, value } of fields) expect(text[line - 1], value).toBeDefined();
    expect(lineOf(fields, "batch_size")).toMatchObject({ line: 32, value: "5 gal", done: "converted" });
    expect(lineOf(fields, "house_code")).toMatchObject({
      done: "kept",
      note: expect.stringContaining("not a field") as string,
    });
    expect(lineOf(fields, "taste › rating")?.done).toBe("kept");
  });

  it("takes a row whole or not at all", () => {
    const berries = fields.filter(({ field }) => field.startsWith("ingredients › fermentable_additions › 4"));
    expect(berries.map(({ done }) => done).filter((done) => done === "taken" || done === "converted")).toEqual([]);
    expect(recipe?.fermentables.map(({ name }) => name)).not.toContain("Towpath berries");
  });

  it.each([
    [2.01, 0],
    [2.06, 0],
    [3.0, 0],
    [1, 1],
  ])("of version %d is read with %d warnings of an unknown version", (version, warnings) => {
    const document = JSON.parse(new TextDecoder().decode(beerJsonFile())) as { readonly beerjson: { version: number } };
    document.beerjson.version = version;
    const { notices } = readRecipeFile(bytesOf(JSON.stringify(document)), null);
    expect(notices.filter((notice) => notice.includes("version"))).toHaveLength(warnings);
  });
});

describe("a BeerXML file", () => {
  const { content, fields } = only(beerXmlFile());
  const recipe = content?.recipe;

  it("is taken from its own units", () => {
    expect(recipe).toMatchObject({ intoFermenter: 20, boil: 60 });
    expect(recipe?.hops[0]).toMatchObject({ grams: 30, alpha: 0.062, minutes: 60 });
    // 3 °L is 1.3546 × 3 − 0.76 SRM, and a liquid extract is in SRM already; an EBC is half of one, as 1.97 says it.
    expectWithin(recipe?.fermentables[0]?.colour ?? 0, (1.3546 * 3 - 0.76) * 1.97, 0.05);
    expectWithin(recipe?.fermentables[2]?.colour ?? 0, 8 * 1.97, 0.1);
    // 13.35 L on 4.2 + 0.25 kg.
    expectWithin(recipe?.thickness ?? 0, 3, 1e-7);
    expect(recipe?.packaging).toMatchObject({ container: "bottle", priming: "dextroseMonohydrate", carbonation: 2.2 });
  });

  it("takes USE as boil, stand or dry, in letters of any case, and no dry hop as a boil addition", () => {
    expect(recipe?.hops.map(({ name, use }) => [name, use])).toEqual([
      ["Paddle hop", "boil"],
      ["Paddle hop", "boil"],
      ["Barge hop", "stand"],
      ["Barge hop", "dry"],
    ]);
    expect(lineOf(fields, "HOPS › 5 › USE")).toMatchObject({ done: "refused", value: "Mash", line: 70 });
  });

  it.each(["TRUE", "true", "True"])("understands %s", (yes) => {
    const forced = changedBeerXml("<FORCED_CARBONATION>FALSE<", `<FORCED_CARBONATION>${yes}<`);
    expect(only(forced).content?.recipe.packaging).toMatchObject({ container: "keg", priming: null });
  });

  it("comes to the efficiency that the file states, on the kettle worked out for it", async () => {
    const { brew } = await import("@/lib/calc/ledger");
    if (content === null) throw new Error("the recipe was not taken");
    const { equipment, ambient } = content.writtenOn;
    const outcome = brew({ recipe: content.recipe, equipment, ambient });
    expectWithin(outcome.ok ? (outcome.ledger.quantities["fermenter.efficiency"] ?? 0) : 0, 0.7, 0.002);
  });
});

describe("what is out of range", () => {
  it("is refused by field, value and range, and the row with it", () => {
    const { content, fields } = only(changedBeerXml("<AMOUNT>0.0300<", "<AMOUNT>-0.0300<"));
    expect(lineOf(fields, "HOPS › 1 › AMOUNT")).toMatchObject({
      done: "refused",
      note: "Amount -30 g is outside 0.1 to 500000 g",
      line: 36,
    });
    expect(content?.recipe.hops).toHaveLength(3);
  });

  it.each(["NaN", "1e999", "60,5", "0x10", "sixty", "Infinity"])("%s is no number of BeerXML", (word) => {
    const { fields } = only(changedBeerXml("<ALPHA>6.2<", `<ALPHA>${word}<`));
    expect(lineOf(fields, "HOPS › 1 › ALPHA")?.done).toBe("refused");
  });

  it("a text is no number of BeerJSON", () => {
    const { content, fields, problems } = only(
      changedBeerJson((recipe) => (recipe.batch_size = { unit: "l", value: "20" })),
    );
    expect(content).toBeNull();
    expect(problems).toEqual(["It lacks a title or a batch size that this book understands"]);
    expect(lineOf(fields, "batch_size")).toMatchObject({
      done: "refused",
      note: "its value is the text “20”, not a number",
    });
  });

  it("a unit that the standard does not have is named with those it has", () => {
    const { fields } = only(changedBeerJson((recipe) => (recipe.batch_size = { unit: "firkin", value: 1 })));
    expect(lineOf(fields, "batch_size")?.note).toContain("“firkin” is none of its units: l, ml");
  });

  it("a hop that boils longer than the boil stops the recipe with both numbers", () => {
    const { content, problems } = only(changedBeerXml("<BOIL_TIME>60.0<", "<BOIL_TIME>30.0<"));
    expect(content).toBeNull();
    expect(problems).toContain("Paddle hop goes in 60 min before the end of a boil of 30 min");
  });
});
