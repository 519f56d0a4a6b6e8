import { describe, expect, it } from "vitest";
import type { Recipe } from "@/lib/calc/ledger";
import { celsius, ebc, fraction, grams, kilograms, litresPerKilogram, minutes } from "@/lib/calc/units";
import { isStandardTag } from "@/lib/model/exchange/beerxml/standard-tags";
import { exportedText } from "@/lib/model/exchange/export-file";
import { isPlainRecord, plainOf, type Plain, type PlainRecord } from "@/lib/model/exchange/file-node";
import { readRecipeFile } from "@/lib/server/exchange/read-file";
import { readXml } from "@/lib/server/exchange/read-xml";
import { PUBLISHED_RECORDS, PUBLISHED_SETS } from "../../reference/exchange/beerxml-tags";
import { garageKettle, sameDay } from "../../support/brewing-fixtures";
import { bytesOf, changedBeerXml } from "../../support/exchange-files";
import { fullRecipe } from "../../support/full-recipe";

/** Where a record stands in a recipe, as the report of an import names places. */
const PATHS: Readonly<Record<string, readonly string[]>> = {
  RECIPE: [],
  HOP: ["HOPS", "1"],
  FERMENTABLE: ["FERMENTABLES", "1"],
  YEAST: ["YEASTS", "1"],
  MISC: ["MISCS", "1"],
  WATER: ["WATERS", "1"],
  EQUIPMENT: ["EQUIPMENT"],
  STYLE: ["STYLE"],
  MASH: ["MASH"],
  MASH_STEP: ["MASH", "MASH_STEPS", "1"],
};
const tagsOf = (record: string): readonly string[] => {
  const { required, optional, display } = PUBLISHED_RECORDS[record] ?? { required: [], optional: [], display: [] };
  return [...required, ...optional, ...display];
};
const EVERY_TAG = [...new Set(Object.keys(PUBLISHED_RECORDS).flatMap(tagsOf))];

describe("the tags of BeerXML", () => {
  it.each(Object.keys(PUBLISHED_RECORDS))("are those of the published table of %s, no more and no fewer", (record) => {
    const known = EVERY_TAG.filter((tag) => isStandardTag([...(PATHS[record] ?? []), tag]));
    expect([...known].sort()).toEqual([...tagsOf(record)].sort());
  });
});

const [malt] = fullRecipe.fermentables;
const [hop] = fullRecipe.hops;
if (malt === undefined || hop === undefined) throw new Error("the full recipe has neither malt nor hop");
const row = (change: Partial<Recipe["fermentables"][number]>) => ({ ...malt, kg: kilograms(0.2), ...change });

/** One of each kind of row that this book has and the standard has a word for. */
const everything: Recipe = {
  ...fullRecipe,
  thickness: litresPerKilogram(3),
  stand: { celsius: celsius(80), minutes: minutes(20) },
  fermentables: [
    malt,
    row({ name: "Flakes", kind: "adjunct", moisture: fraction(0.09) }),
    row({ name: "Syrup", kind: "malt extract", station: "kettle", moisture: fraction(0.2), extract: fraction(0.97) }),
    row({ name: "Powder", kind: "malt extract", station: "kettle", moisture: fraction(0.03), colour: ebc(12) }),
    row({ name: "Candy", kind: "sugar", station: "kettle", moisture: fraction(0) }),
  ],
  hops: [
    hop,
    { ...hop, use: "stand", minutes: minutes(20), grams: grams(12) },
    { ...hop, use: "dry", minutes: minutes(0) },
  ],
};
const forced: Recipe = { ...everything, packaging: { ...everything.packaging, container: "keg", priming: null } };
const extractBrew: Recipe = {
  ...everything,
  mash: [],
  thickness: null,
  fermentables: everything.fermentables.filter(({ station }) => station === "kettle"),
};

function exported(recipe: Recipe): PlainRecord {
  const writtenOn = { name: garageKettle.name, equipment: garageKettle, ambient: sameDay };
  const content = { recipe, entered: {}, style: null, notes: "Invented", writtenOn };
  const text = exportedText("beerxml-1.0", [{ title: "All of it", author: "Nobody", content, leftover: null }]);
  const document = plainOf(readXml(text)) as { readonly RECIPES: readonly PlainRecord[] };
  return document.RECIPES[0] ?? {};
}

/** Everything in a record, and in the records in it, that the published tables do not allow. */
function faults(record: string, value: PlainRecord): readonly string[] {
  const { required = [], lists = {} } = PUBLISHED_RECORDS[record] ?? {};
  const isExtract = record === "RECIPE" && value.TYPE === "Extract";
  const wanted = required.filter((tag) => !(isExtract && tag === "MASH"));
  const missing = wanted.filter((tag) => !Object.hasOwn(value, tag)).map((tag) => `${record} has no ${tag}`);
  const wrong = Object.entries(value).flatMap(([tag, part]) => {
    if (!tagsOf(record).includes(tag)) return [`${record} has ${tag}`];
    const list = lists[tag];
    const isWrong = list !== undefined && (typeof part !== "string" || !list.includes(part));
    if (isWrong) return [`${tag} of ${record} is ${JSON.stringify(part)}`];
    return within(tag, part);
  });
  return [...missing, ...wrong];
}

function within(tag: string, part: Plain): readonly string[] {
  if (Array.isArray(part)) {
    const rows = part as readonly Plain[];
    return rows.flatMap((each) =>
      isPlainRecord(each) ? faults(PUBLISHED_SETS[tag] ?? tag, each) : [`${tag} has a text`],
    );
  }
  return isPlainRecord(part) ? faults(tag, part) : [];
}

describe("what is exported as BeerXML", () => {
  it.each([
    ["a brew of everything", everything],
    ["a keg from a cylinder", forced],
    ["a brew of extract alone", extractBrew],
  ])("has every required tag, no other tag and no other word: %s", (_what, recipe) => {
    expect(faults("RECIPE", exported(recipe))).toEqual([]);
  });

  it("says what is predicted where the standard has estimates, with the units of its appendix", () => {
    const recipe = exported(everything);
    for (const measured of ["OG", "FG", "ABV"]) expect(recipe).not.toHaveProperty(measured);
    expect(recipe.EST_OG).toMatch(/^1\.\d+ sg$/);
    expect(recipe.EST_FG).toMatch(/^\d\.\d+ sg$/);
    expect(recipe.EST_COLOR).toMatch(/^\d+(\.\d+)? srm$/);
  });

  it("has moisture and mashing of grain and adjuncts alone, an infusion with its litres, and one size of batch", () => {
    const { FERMENTABLES, MASH, EQUIPMENT, BATCH_SIZE, BOIL_SIZE } = exported(everything) as unknown as {
      readonly FERMENTABLES: readonly Readonly<Record<string, string>>[];
      readonly MASH: { readonly MASH_STEPS: readonly Readonly<Record<string, string>>[] };
      readonly EQUIPMENT: Readonly<Record<string, string>>;
      readonly BATCH_SIZE: string;
      readonly BOIL_SIZE: string;
    };
    for (const { TYPE = "", ...tags } of FERMENTABLES) {
      const isGrain = ["Grain", "Adjunct"].includes(TYPE);
      expect([TYPE, "MOISTURE" in tags, "RECOMMEND_MASH" in tags]).toEqual([TYPE, isGrain, isGrain]);
    }
    for (const step of MASH.MASH_STEPS) expect("INFUSE_AMOUNT" in step).toBe(step.TYPE === "Infusion");
    expect([EQUIPMENT.BATCH_SIZE, EQUIPMENT.BOIL_SIZE]).toEqual([BATCH_SIZE, BOIL_SIZE]);
  });
});

const taken = (from: string, to: string, [second, put]: readonly [string, string] = ["", ""]) => {
  const text = new TextDecoder().decode(changedBeerXml(from, to));
  if (!text.includes(second)) throw new Error(`the file does not have ${second}`);
  const [recipe] = readRecipeFile(bytesOf(text.replace(second, put)), null).recipes;
  if (recipe === undefined || recipe.content === null) throw new Error("the recipe was not taken");
  return { ...recipe, recipe: recipe.content.recipe };
};
const SALT = `<AMOUNT>0.003</AMOUNT>
        <AMOUNT_IS_WEIGHT>true</AMOUNT_IS_WEIGHT>`;
const EXTRACT = `<TYPE>Extract</TYPE>
        <AMOUNT>0.40</AMOUNT>
        <YIELD>78.0</YIELD>`;

describe("what is read of BeerXML", () => {
  it("takes the yield of an adjunct by weight as it is, and of grain of its dry substance", () => {
    const adjunct = `<TYPE>Adjunct</TYPE><AMOUNT>0.40</AMOUNT><YIELD>70.0</YIELD><MOISTURE>9.0</MOISTURE>`;
    const { recipe } = taken(EXTRACT, adjunct);
    // 0.70 kg of extract in a kilogram of which 0.91 kg is dry.
    expect(recipe.fermentables[2]?.extract).toBeCloseTo(0.7 / 0.91, 9);
    expect(recipe.fermentables[0]?.extract).toBe(0.81);
  });

  it("ignores the moisture of an extract, as the standard says, and keeps it for export", () => {
    const { recipe, fields } = taken(EXTRACT, `${EXTRACT}<MOISTURE>50.0</MOISTURE>`);
    expect(recipe.fermentables[2]?.moisture).toBe(0.2);
    const note = fields.find(({ field }) => field === "FERMENTABLES › 3 › MOISTURE");
    expect(note).toMatchObject({ done: "kept", note: "the standard ignores it of what is no grain" });
  });

  it("weighs a salt and measures out an acid where the flag is not there, and takes neither by the other", () => {
    expect(taken(SALT, "<AMOUNT>0.003</AMOUNT>").recipe.water.salts).toEqual({ calciumChlorideDihydrate: 3 });
    const measured = "<AMOUNT>0.003</AMOUNT><AMOUNT_IS_WEIGHT>FALSE</AMOUNT_IS_WEIGHT>";
    expect(taken(SALT, measured).recipe.water.salts).toEqual({});
    const acid = (flag: string) =>
      taken("<NAME>Calcium chloride</NAME>", "<NAME>Lactic acid 80 %</NAME>", [SALT, `<AMOUNT>0.003</AMOUNT>${flag}`]);
    expect(acid("").recipe.water.acid?.ml).toBe(3);
    expect(acid("<AMOUNT_IS_WEIGHT>TRUE</AMOUNT_IS_WEIGHT>").recipe.water.acid).toBeNull();
  });

  it("boils a hop of the first wort for its own time, and for the whole boil where it has none", () => {
    const wort = (time: string) =>
      taken(
        `<USE>First Wort</USE>
        <TIME>60.0</TIME>`,
        `<USE>First Wort</USE><TIME>${time}</TIME>`,
      ).recipe.hops[1];
    expect(wort("45.0")).toMatchObject({ use: "boil", minutes: 45 });
    expect(wort("0")).toMatchObject({ use: "boil", minutes: 60 });
  });

  it.each([
    ["<OG>1.050</OG>", "<EST_OG>12 plato</EST_OG>", { originalExtract: 12 }],
    ["<OG>1.050</OG>", "<EST_COLOR>40 ebc</EST_COLOR>", { colour: 40 }],
    ["<OG>1.050</OG>", "<IBU>31.5</IBU><EST_ABV>4.9</EST_ABV>", { bitterness: 31.5, alcohol: 4.9 }],
  ])("compares figures for display in the units of the appendix: %s → %s", (from, to, stated) => {
    expect(taken(from, to).stated).toMatchObject(stated);
  });

  it("compares with what a file predicts before what it measured", () => {
    const { stated } = taken("<OG>1.050</OG>", "<OG>1.050</OG><EST_OG>12 plato</EST_OG>");
    expect(stated.originalExtract).toBe(12);
  });
});
