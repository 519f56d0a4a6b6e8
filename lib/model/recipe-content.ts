import { z } from "zod";
import type { Recipe } from "@/lib/calc/ledger";
import { ambientInput } from "./ambient";
import { equipmentInput } from "./equipment";
import { counted, measuredBy, revisionNumber } from "./measured";
import { recipeConflicts } from "./recipe-conflicts";
import { MASH_STEP_FIELDS, PACKAGING_FIELDS, RECIPE_FIELDS, STAND_FIELDS, YEAST_FIELDS } from "./recipe-fields";
import { fermentableRow, hopRow, waterTreatment } from "./recipe-rows";
import { oneOf, optionalText, recordId, written } from "./written";

const MOST_ROWS = 40;
const MOST_MASH_STEPS = 12;

const mashStep = z.strictObject({
  celsius: measuredBy(MASH_STEP_FIELDS.celsius),
  minutes: measuredBy(MASH_STEP_FIELDS.minutes),
});

const hopStand = z.strictObject({
  celsius: measuredBy(STAND_FIELDS.celsius),
  minutes: measuredBy(STAND_FIELDS.minutes),
});

const yeast = z.strictObject({
  name: written("Name of the yeast", 80),
  attenuationLow: measuredBy(YEAST_FIELDS.attenuationLow),
  attenuationHigh: measuredBy(YEAST_FIELDS.attenuationHigh),
  pitch: measuredBy(YEAST_FIELDS.pitch),
  celsius: measuredBy(YEAST_FIELDS.celsius),
});

const packaging = z.strictObject({
  container: oneOf("Container", ["bottle", "keg"]),
  carbonation: measuredBy(PACKAGING_FIELDS.carbonation),
  priming: oneOf("Priming sugar", ["sucrose", "dextroseMonohydrate", "dextroseAnhydrous"]).nullable(),
  warmest: measuredBy(PACKAGING_FIELDS.warmest),
  rated: measuredBy(PACKAGING_FIELDS.rated),
});

/** A recipe as it is brewed: its rows, its mash, its boil and what is wanted of the beer. */
export const recipeInput: z.ZodType<Recipe> = z
  .strictObject({
    intoFermenter: measuredBy(RECIPE_FIELDS.intoFermenter),
    topUp: measuredBy(RECIPE_FIELDS.topUp),
    thickness: measuredBy(RECIPE_FIELDS.thickness).nullable(),
    mash: z.array(mashStep).max(MOST_MASH_STEPS, `A recipe has at most ${String(MOST_MASH_STEPS)} mash steps`),
    mashes: counted("Number of mashes", { min: 1, max: 2 }),
    boil: measuredBy(RECIPE_FIELDS.boil),
    stand: hopStand.nullable(),
    fermentables: z
      .array(fermentableRow, { error: "A recipe needs a list of fermentables" })
      .min(1, "A recipe needs at least one fermentable: malt, sugar or malt extract")
      .max(MOST_ROWS, `A recipe has at most ${String(MOST_ROWS)} fermentables`),
    hops: z.array(hopRow).max(MOST_ROWS, `A recipe has at most ${String(MOST_ROWS)} hop additions`),
    water: waterTreatment,
    yeast,
    packaging,
  })
  .superRefine((recipe, context) => {
    for (const { path, message } of recipeConflicts(recipe)) {
      context.addIssue({ code: "custom", path: [...path], message });
    }
  });

const MOST_ENTERED = 800;

/** What a stored revision holds. `entered` keeps the text that somebody typed, by the path of its field. */
export const recipeContent = z.strictObject({
  recipe: recipeInput,
  entered: z
    .record(z.string().max(120), z.string().max(80))
    .refine((texts) => Object.keys(texts).length <= MOST_ENTERED, { message: "Too many typed texts" }),
  style: z
    .string()
    .regex(/^[\w-]{1,12}$/, "This is not a code of the style list")
    .nullable(),
  notes: optionalText("Notes", 20000),
  /** The kettle that the amounts are for; its ledger is the intention for every other one. */
  writtenOn: z.strictObject({
    name: written("Name of the equipment", 80),
    equipment: equipmentInput,
    ambient: ambientInput,
  }),
});
export type RecipeContent = z.output<typeof recipeContent>;

const titleAndText = {
  title: written("Title", 160),
  content: recipeContent,
  message: optionalText("Note on the change", 500),
};

export const newRecipe = z.strictObject(titleAndText);
export type NewRecipe = z.output<typeof newRecipe>;

export const newRevision = z.strictObject({
  id: recordId,
  baseRev: revisionNumber,
  ...titleAndText,
});
export type NewRevision = z.output<typeof newRevision>;

/** One recipe in a list. */
export interface RecipeSummary {
  readonly id: string;
  readonly title: string;
  readonly headRev: number;
  readonly authorName: string;
  readonly changedAt: Date;
}

/** The text of a recipe at one moment; it never changes. */
export interface RecipeRevision {
  readonly id: string;
  readonly title: string;
  readonly rev: number;
  readonly headRev: number;
  readonly content: RecipeContent;
  readonly message: string;
  readonly calcVersion: string;
  readonly authorName: string;
  readonly createdAt: Date;
}

/** One revision in a list. */
export interface RevisionSummary {
  readonly rev: number;
  readonly message: string;
  readonly authorName: string;
  readonly createdAt: Date;
}
