import type { Equipment } from "@/lib/calc/ledger";
import type { RecipeContent } from "../recipe-content";
import { readBeerJsonRecipe } from "./beerjson/read-recipe";
import { isStandardPath } from "./beerjson/standard-fields";
import { writtenBeerJsonRecipe } from "./beerjson/write-recipe";
import { readBeerXmlRecipe } from "./beerxml/read-recipe";
import { isStandardTag } from "./beerxml/standard-tags";
import { writtenBeerXmlRecipe } from "./beerxml/write-recipe";
import { contentOf } from "./content-of";
import { FieldCursor } from "./field-cursor";
import {
  FILE_LIMITS,
  isList,
  isRecord,
  plainOf,
  UnreadableFileError,
  type FileNode,
  type PlainRecord,
} from "./file-node";
import { LEFTOVER_BYTES, leftoverOf, type LeftoverEntry } from "./leftover";
import { keptBecause, ReadingLog, type FieldReport } from "./report";
import { NO_FIGURES, type StatedFigures, type StatedRecipe } from "./stated-recipe";

export const EXCHANGE_FORMATS = ["beerjson", "beerxml"] as const;
export type ExchangeFormat = (typeof EXCHANGE_FORMATS)[number];

/** One recipe of a file, and all that was done with it. */
export interface ReadRecipe {
  readonly title: string;
  /** null where it cannot be taken; `problems` say why. */
  readonly content: RecipeContent | null;
  readonly problems: readonly string[];
  readonly derived: readonly string[];
  readonly fields: readonly FieldReport[];
  readonly stated: StatedFigures;
  readonly leftover: readonly LeftoverEntry[];
}

export interface ReadFile {
  readonly format: ExchangeFormat;
  readonly version: string;
  readonly notices: readonly string[];
  readonly recipes: readonly ReadRecipe[];
}

/** What a revision of this title and content is in a format, before anything that was left over is put back. */
export function writtenIn(
  format: ExchangeFormat,
  titled: { readonly title: string; readonly content: RecipeContent },
): PlainRecord {
  return format === "beerjson" ? writtenBeerJsonRecipe(titled) : writtenBeerXmlRecipe(titled);
}

/** Reads all recipes of a document for one kettle; null derives a kettle for each from what the file states. */
export function readRecipes(format: ExchangeFormat, root: FileNode, kettle: Equipment | null): ReadFile {
  const document = new FieldCursor(root, new ReadingLog()).at(format === "beerjson" ? "beerjson" : "RECIPES");
  if (document.node === null) throw new UnreadableFileError(1, NOT_FOUND[format]);
  const list = format === "beerjson" ? document.at("recipes").node : document.node;
  const recipes = list !== null && isList(list.value) ? list.value : [];
  if (recipes.length === 0) throw new UnreadableFileError(null, "There is no recipe in this file.");
  if (recipes.length > FILE_LIMITS.recipes) {
    throw new UnreadableFileError(
      null,
      `There are ${String(recipes.length)} recipes in this file; one import takes at most ${String(FILE_LIMITS.recipes)}.`,
    );
  }
  const version = (
    format === "beerjson" ? document.at("version") : new FieldCursor(recipes[0] ?? null, document.log).at("VERSION")
  ).text;
  return {
    format,
    version: (version ?? "").slice(0, 20),
    notices: noticesOf(format, version, document),
    recipes: recipes.map((node, index) => readOne(format, node, index, document.node, kettle)),
  };
}

const NOT_FOUND: Readonly<Record<ExchangeFormat, string>> = {
  beerjson: "This is JSON, but not BeerJSON: its outermost record has no “beerjson”.",
  beerxml: "This is XML, but no set of recipes in BeerXML: its outermost tag is not RECIPES.",
};

const KNOWN_VERSIONS: Readonly<Record<ExchangeFormat, readonly string[]>> = {
  beerjson: ["2.01", "2.06", "3"],
  beerxml: ["1", "1.0"],
};

function noticesOf(format: ExchangeFormat, version: string | null, document: FieldCursor): readonly string[] {
  const known = KNOWN_VERSIONS[format];
  const notices: string[] = [];
  if (version === null) notices.push("The file does not say which version of the standard it follows.");
  else if (!known.includes(version)) {
    notices.push(`The file says that it follows version ${version.slice(0, 20)}; known are ${known.join(", ")}.`);
  }
  if (format === "beerjson" && document.node !== null && isRecord(document.node.value)) {
    for (const [key, { value }] of document.node.value) {
      if (!isList(value) || key === "recipes" || value.length === 0) continue;
      const use =
        key === "fermentables" || key === "cultures"
          ? "only what its recipes need of them is read"
          : "they are no recipes and are not taken";
      notices.push(`The file also has ${String(value.length)} records under “${key.slice(0, 40)}”: ${use}.`);
    }
  }
  return notices;
}

function readOne(
  format: ExchangeFormat,
  node: FileNode,
  index: number,
  document: FileNode | null,
  kettle: Equipment | null,
): ReadRecipe {
  const log = new ReadingLog();
  const recipe = new FieldCursor(node, log);
  const stated =
    format === "beerjson" ? readBeerJsonRecipe(recipe, new FieldCursor(document, log)) : readBeerXmlRecipe(recipe);
  const outcome = stated === null ? null : takeStated(format, stated, node, kettle, log);
  return {
    title: stated?.title ?? `Recipe ${String(index + 1)}, without a title`,
    content: outcome?.content ?? null,
    problems: outcome?.problems ?? ["It lacks a title or a batch size that this book understands"],
    derived: log.derived,
    fields: log.lines(node, unmarkedIn[format]),
    stated: stated?.figures ?? NO_FIGURES,
    leftover: outcome?.leftover ?? [],
  };
}

const unmarkedIn: Readonly<Record<ExchangeFormat, Parameters<ReadingLog["lines"]>[1]>> = {
  beerjson: (path) => keptBecause(isStandardPath(["recipes", ...path])),
  // Every record of BeerXML says the version of the standard, which says nothing of the recipe.
  beerxml: (path) =>
    path.at(-1) === "VERSION" ? { done: "taken", note: "version of the standard" } : keptBecause(isStandardTag(path)),
};

function takeStated(
  format: ExchangeFormat,
  stated: StatedRecipe,
  node: FileNode,
  kettle: Equipment | null,
  log: ReadingLog,
) {
  const made = contentOf(stated, kettle, log);
  if (!made.ok) return { content: null, problems: made.problems, leftover: [] };
  const leftover = leftoverOf(plainOf(node), writtenIn(format, { title: stated.title, content: made.content }));
  if (new TextEncoder().encode(JSON.stringify(leftover)).length > LEFTOVER_BYTES) {
    return {
      content: null,
      problems: [`It has more than ${String(LEFTOVER_BYTES / 1024)} kB that this book would have to keep for export`],
      leftover: [],
    };
  }
  return { content: made.content, problems: [], leftover };
}
