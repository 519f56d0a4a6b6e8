import Ajv2020 from "ajv/dist/2020";
import { describe, expect, it } from "vitest";
import { exportedText, type ExportKind, type RecipeToExport } from "@/lib/model/exchange/export-file";
import { isPlainRecord, plainOf, type Plain } from "@/lib/model/exchange/file-node";
import { readJson } from "@/lib/model/exchange/read-json";
import { readRecipeFile } from "@/lib/server/exchange/read-file";
import { readXml } from "@/lib/server/exchange/read-xml";
import { beerJsonSchema } from "../../reference/exchange/beerjson-schema";
import { beerJsonFile, beerXmlFile, bytesOf, changedBeerJson } from "../../support/exchange-files";

const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

function taken(bytes: Uint8Array): RecipeToExport {
  const { format, recipes } = readRecipeFile(bytes, null);
  const [recipe] = recipes;
  if (recipe === undefined || recipe.content === null) throw new Error("the recipe was not taken");
  return {
    title: recipe.title,
    author: "Somebody",
    content: recipe.content,
    leftover: { format, entries: recipe.leftover },
  };
}

const jsonRecipe = (text: string): Plain => {
  const document = plainOf(readJson(text)) as { readonly beerjson: { readonly recipes: readonly Plain[] } };
  return document.beerjson.recipes[0] ?? null;
};
const xmlRecipe = (text: string): Plain => {
  const document = plainOf(readXml(text)) as { readonly RECIPES: readonly Plain[] };
  return document.RECIPES[0] ?? null;
};

/** Every leaf of `file` that `other` does not have at the same place, rows of a list by place. */
function lost(file: Plain, other: Plain | undefined, at = ""): readonly string[] {
  if (Array.isArray(file)) {
    const rows = Array.isArray(other) ? (other as readonly Plain[]) : [];
    return (file as readonly Plain[]).flatMap((row, i) => {
      const name = isPlainRecord(row) ? (row.name ?? row.NAME) : undefined;
      const alike = rows.filter((found) => isPlainRecord(found) && (found.name ?? found.NAME) === name);
      const nth = (file as readonly Plain[])
        .slice(0, i)
        .filter((before) => isPlainRecord(before) && (before.name ?? before.NAME) === name).length;
      return lost(row, alike[nth], `${at}/${String(i)}`);
    });
  }
  if (isPlainRecord(file)) {
    return Object.entries(file).flatMap(([key, part]) =>
      lost(part, isPlainRecord(other) ? other[key] : undefined, `${at}/${key}`),
    );
  }
  return file === other ? [] : [`${at}: ${JSON.stringify(file)} → ${JSON.stringify(other)}`];
}

describe("a file that is taken and exported again", () => {
  it("has every line of BeerJSON that it had", () => {
    const out = exportedText("beerjson-2.06", [taken(beerJsonFile())]);
    expect(lost(jsonRecipe(textOf(beerJsonFile())), jsonRecipe(out))).toEqual([]);
  });

  it("has every line of BeerXML that it had", () => {
    const out = exportedText("beerxml-1.0", [taken(beerXmlFile())]);
    expect(lost(xmlRecipe(textOf(beerXmlFile())), xmlRecipe(out))).toEqual([]);
  });

  it.each([
    ["beerjson-2.06", beerJsonFile],
    ["beerjson-3.0", beerJsonFile],
    ["beerxml-1.0", beerXmlFile],
    ["beerxml-1.0", beerJsonFile],
    ["beerjson-3.0", beerXmlFile],
  ] as const)("is the same beer when its %s is taken again", (kind, file) => {
    const before = taken(file()).content.recipe;
    const after = taken(bytesOf(exportedText(kind, [taken(file())]))).content.recipe;
    const rows = ({ hops, fermentables }: typeof before) => [
      hops.map(({ name, use }) => [name, use]),
      fermentables.map(({ name, station, kind: what }) => [name, station, what]),
    ];
    expect(rows(after)).toEqual(rows(before));
    expect(after.intoFermenter).toBeCloseTo(before.intoFermenter, 6);
  });

  it("follows the revision where that has changed, and keeps the rest", () => {
    const recipe = taken(beerJsonFile());
    const [first, ...others] = recipe.content.recipe.hops;
    if (first === undefined) throw new Error("no hop");
    const hops = [...others, { ...first, grams: first.grams }];
    const fermentables = recipe.content.recipe.fermentables.filter(({ name }) => name !== "Canal syrup");
    const changed = {
      ...recipe,
      content: { ...recipe.content, recipe: { ...recipe.content.recipe, hops, fermentables } },
    };
    const out = jsonRecipe(exportedText("beerjson-2.06", [changed])) as {
      readonly ingredients: {
        readonly hop_additions: readonly Plain[];
        readonly fermentable_additions: readonly Plain[];
      };
    };
    const names = out.ingredients.fermentable_additions.map((row) => (isPlainRecord(row) ? row.name : null));
    expect(names).not.toContain("Canal syrup");
    expect(names).toContain("Towpath berries");
    expect(out.ingredients.hop_additions).toContainEqual(expect.objectContaining({ name: "Mash hop" }));
  });
});

describe("what is exported", () => {
  const valid = (kind: ExportKind, bytes: Uint8Array): unknown => {
    const validate = new Ajv2020({ strict: false, allErrors: true }).compile(beerJsonSchema(kind === "beerjson-2.06"));
    validate(JSON.parse(exportedText(kind, [taken(bytes)])));
    return validate.errors ?? [];
  };
  const withoutHouseCode = () => changedBeerJson((recipe) => delete recipe.house_code);

  it("is valid BeerJSON of either version", () => {
    expect(valid("beerjson-2.06", withoutHouseCode())).toEqual([]);
    expect(valid("beerjson-3.0", withoutHouseCode())).toEqual([]);
    expect(valid("beerjson-3.0", beerXmlFile())).toEqual([]);
  });

  it("has no field in 3.0 that the standard has not, and keeps it in 2.06", () => {
    expect(valid("beerjson-3.0", beerJsonFile())).toEqual([]);
    expect(exportedText("beerjson-2.06", [taken(beerJsonFile())])).toContain("house_code");
  });

  it("keeps such a field in 3.0 where the standard has left a type open", () => {
    const marked = changedBeerJson((recipe) => {
      const { hop_additions: hops } = recipe.ingredients as { readonly hop_additions: Record<string, unknown>[] };
      for (const hop of hops) hop.house_note = "dried on the towpath";
    });
    const text = exportedText("beerjson-3.0", [taken(marked)]);
    expect(text).toContain("dried on the towpath");
    expect(text).not.toContain("house_code");
    expect(valid("beerjson-3.0", marked)).toEqual([]);
  });

  it("spells fluoride as its version does", () => {
    expect(exportedText("beerjson-3.0", [taken(beerJsonFile())])).toContain('"fluoride"');
    expect(exportedText("beerjson-2.06", [taken(beerJsonFile())])).toContain('"flouride"');
  });

  it("calls a culture wheat only where the standard knows the word", () => {
    const wheat = changedBeerJson((recipe) => {
      const { culture_additions: cultures } = recipe.ingredients as { readonly culture_additions: { type: string }[] };
      for (const culture of cultures) culture.type = "wheat";
    });
    expect(exportedText("beerjson-3.0", [taken(wheat)])).toContain('"type": "wheat"');
    expect(valid("beerjson-2.06", wheat)).not.toContainEqual(expect.objectContaining({ keyword: "enum" }));
  });
});
