import { z } from "zod";
import type { Recipe } from "@/lib/calc/ledger";
import { celsius, fraction, litres, litresPerKilogram, millionPerMlPlato, minutes, volumesCo2 } from "@/lib/calc/units";
import { ambientInput } from "./ambient";
import { equipmentInput } from "./equipment";
import { counted, measured, revisionNumber } from "./measured";
import { fermentableRow, hopRow, waterTreatment } from "./recipe-rows";
import { oneOf, optionalText, recordId, written } from "./written";

const MOST_ROWS = 40;
const MOST_MASH_STEPS = 12;

const mashStep = z.strictObject({
  celsius: measured("Mash temperature", celsius, { min: 10, max: 100 }),
  minutes: measured("Length of the rest", minutes, { min: 0, max: 1440 }),
});

const hopStand = z.strictObject({
  celsius: measured("Stand temperature", celsius, { min: 30, max: 100 }),
  minutes: measured("Length of the stand", minutes, { min: 0, max: 240 }),
});

const yeast = z
  .strictObject({
    name: written("Name of the yeast", 80),
    attenuationLow: measured("Attenuation, low", fraction, { min: 0.3, max: 1 }),
    attenuationHigh: measured("Attenuation, high", fraction, { min: 0.3, max: 1 }),
    pitch: measured("Pitch rate", millionPerMlPlato, { min: 0.01, max: 5 }),
    celsius: measured("Fermentation temperature", celsius, { min: 0, max: 45 }),
  })
  .refine((y) => y.attenuationLow <= y.attenuationHigh, {
    path: ["attenuationLow"],
    message: "Attenuation, low is above attenuation, high",
  });

const packaging = z.strictObject({
  container: oneOf("Container", ["bottle", "keg"]),
  carbonation: measured("Carbonation", volumesCo2, { min: 0, max: 6 }),
  priming: oneOf("Priming sugar", ["sucrose", "dextroseMonohydrate", "dextroseAnhydrous"]).nullable(),
  warmest: measured("Warmest temperature since fermentation", celsius, { min: -2, max: 45 }),
  rated: measured("Carbonation that the container is made for", volumesCo2, { min: 1, max: 10 }),
});

/** A recipe as it is brewed: its rows, its mash, its boil and what is wanted of the beer. */
export const recipeInput: z.ZodType<Recipe> = z
  .strictObject({
    intoFermenter: measured("Volume into the fermenter", litres, { min: 0.3, max: 5000 }),
    topUp: measured("Water after the boil", litres, { min: 0, max: 5000 }),
    thickness: measured("Mash thickness", litresPerKilogram, { min: 1.5, max: 12 }).nullable(),
    mash: z.array(mashStep).max(MOST_MASH_STEPS, `A recipe has at most ${String(MOST_MASH_STEPS)} mash steps`),
    mashes: counted("Number of mashes", { min: 1, max: 2 }),
    boil: measured("Boil", minutes, { min: 0, max: 600 }),
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
  .superRefine(sayWhatDoesNotFit);

/** Rules between fields; each message stands at the field that somebody would change. */
function sayWhatDoesNotFit(recipe: Recipe, context: z.core.$RefinementCtx<Recipe>): void {
  const refuse = (path: (string | number)[], message: string): void => {
    context.addIssue({ code: "custom", path, message });
  };
  if (recipe.topUp >= recipe.intoFermenter) {
    refuse(["topUp"], `Water after the boil ${recipe.topUp} L is not less than the ${recipe.intoFermenter} L wanted`);
  }
  if (recipe.mash.length === 0 && recipe.fermentables.some((row) => row.station === "mash")) {
    refuse(["mash"], "A recipe with grain in the mash needs a mash step");
  }
  recipe.hops.forEach((hop, index) => {
    const where = ["hops", index, "minutes"];
    if (hop.use === "boil" && hop.minutes > recipe.boil) {
      refuse(where, `${hop.name} goes in ${hop.minutes} min before the end of a boil of ${recipe.boil} min`);
    }
    if (hop.use !== "stand") return;
    if (recipe.stand === null) refuse(["hops", index, "use"], `${hop.name} is for a hop stand, and there is none`);
    else if (hop.minutes > recipe.stand.minutes) {
      refuse(where, `${hop.name} stands for ${hop.minutes} min in a stand of ${recipe.stand.minutes} min`);
    }
  });
}

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
