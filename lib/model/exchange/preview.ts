import type { QuantityId } from "@/lib/calc/ledger";
import type { ReadFile, ReadRecipe } from "./read-recipes";
import type { Done, FieldReport } from "./report";
import type { StatedFigures } from "./stated-recipe";
import { writtenFigures } from "./written-figures";

/** What an import would do, before anything is stored. */
export interface ImportPreview extends Omit<ReadFile, "recipes"> {
  readonly recipes: readonly PreviewedRecipe[];
}

export interface PreviewedRecipe extends Pick<ReadRecipe, "title" | "problems" | "derived" | "fields"> {
  /** Its place in the file, from 0. */
  readonly place: number;
  readonly isTaken: boolean;
  readonly figures: readonly PreviewedFigure[];
}

/** A figure that the file states beside the one that this book computes, both in the unit of the ledger. */
export interface PreviewedFigure {
  readonly id: QuantityId;
  readonly stated: number;
  readonly computed: number | null;
}

const COMPARED: readonly (readonly [keyof StatedFigures, QuantityId])[] = [
  ["originalExtract", "fermenter.originalExtract"],
  ["finalExtract", "fermenter.finalExtract"],
  ["bitterness", "fermenter.bitterness"],
  ["colour", "fermenter.colour"],
  ["alcohol", "package.alcohol"],
];

export function previewOf({ recipes, ...file }: ReadFile): ImportPreview {
  return { ...file, recipes: recipes.map(previewedRecipe) };
}

function previewedRecipe(
  { title, problems, derived, fields, content, stated }: ReadRecipe,
  place: number,
): PreviewedRecipe {
  const computed = content === null ? () => null : writtenFigures(content);
  const figures = COMPARED.flatMap(([key, id]) => {
    const value = stated[key];
    return value === null ? [] : [{ id, stated: value, computed: computed(id) }];
  });
  return { place, title, isTaken: content !== null, problems, derived, fields, figures };
}

/** How many fields ended in each way. */
export function countOf(fields: readonly FieldReport[], ...ways: readonly Done[]): number {
  return fields.filter(({ done }) => ways.includes(done)).length;
}
