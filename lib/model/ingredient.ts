import { z } from "zod";
import { ACIDS, SALTS } from "@/lib/calc/water";
import {
  ACID_INGREDIENT_FIELDS,
  FERMENTABLE_INGREDIENT_FIELDS,
  HOP_INGREDIENT_FIELDS,
  YEAST_INGREDIENT_FIELDS,
} from "./ingredient-fields";
import type { IngredientKind } from "./ingredient-kinds";
import { counted, measuredBy } from "./measured";
import { oneOf, optionalText, recordId, written } from "./written";

export const FERMENTABLE_KINDS = ["malt", "adjunct", "sugar", "malt extract"] as const;

const fermentable = FERMENTABLE_INGREDIENT_FIELDS;

/** What is usual of an ingredient, by its kind; a lot's own analysis replaces it. */
const figuresOf = {
  fermentable: z
    .strictObject({
      kind: oneOf("Kind of fermentable", FERMENTABLE_KINDS),
      station: oneOf("Where it goes in", ["mash", "kettle"]),
      extract: measuredBy(fermentable.extract),
      moisture: measuredBy(fermentable.moisture),
      colour: measuredBy(fermentable.colour),
      fermentability: measuredBy(fermentable.fermentability).nullable(),
      acidity: z
        .strictObject({
          distilledWaterPh: measuredBy(fermentable.distilledWaterPh),
          buffering: measuredBy(fermentable.buffering),
          lacticFraction: measuredBy(fermentable.lacticFraction),
        })
        .nullable(),
    })
    .refine((row) => row.kind !== "malt" || row.station === "mash", {
      path: ["station"],
      message: "Malt goes into the mash",
    }),
  hop: z
    .strictObject({
      alphaLow: measuredBy(HOP_INGREDIENT_FIELDS.alphaLow),
      alphaHigh: measuredBy(HOP_INGREDIENT_FIELDS.alphaHigh),
      lossIn6Months: measuredBy(HOP_INGREDIENT_FIELDS.lossIn6Months).nullable(),
    })
    .refine((hop) => hop.alphaLow <= hop.alphaHigh, {
      path: ["alphaHigh"],
      message: "Alpha acids, high, is below the low figure",
    }),
  yeast: z
    .strictObject({
      attenuationLow: measuredBy(YEAST_INGREDIENT_FIELDS.attenuationLow),
      attenuationHigh: measuredBy(YEAST_INGREDIENT_FIELDS.attenuationHigh),
      celsiusLow: measuredBy(YEAST_INGREDIENT_FIELDS.celsiusLow),
      celsiusHigh: measuredBy(YEAST_INGREDIENT_FIELDS.celsiusHigh),
    })
    .refine((yeast) => yeast.attenuationLow <= yeast.attenuationHigh, {
      path: ["attenuationHigh"],
      message: "Attenuation, high, is below the low figure",
    })
    .refine((yeast) => yeast.celsiusLow <= yeast.celsiusHigh, {
      path: ["celsiusHigh"],
      message: "Fermentation temperature, high, is below the low figure",
    }),
  salt: z.strictObject({ salt: oneOf("Salt", SALTS) }),
  acid: z.strictObject({
    acid: oneOf("Acid", ACIDS),
    massFraction: measuredBy(ACID_INGREDIENT_FIELDS.massFraction),
    density: measuredBy(ACID_INGREDIENT_FIELDS.density),
  }),
} as const;

const of = <const K extends IngredientKind>(kind: K) =>
  z.strictObject({ kind: z.literal(kind), figures: figuresOf[kind] });

/** Kind and figures as they are kept. */
export const kindAndFigures = z.discriminatedUnion("kind", [
  of("fermentable"),
  of("hop"),
  of("yeast"),
  of("salt"),
  of("acid"),
]);
export type KindAndFigures = z.output<typeof kindAndFigures>;

const nameAndNotes = {
  name: written("Name of the ingredient", 80),
  notes: optionalText("Notes", 4000),
  what: kindAndFigures,
};

/** An ingredient that the lists of the program do not have. */
export const newIngredient = z.strictObject(nameAndNotes);
export type NewIngredient = z.output<typeof newIngredient>;

export const version = counted("Version", { min: 1, max: 1_000_000_000 });

export const ingredientChange = z.strictObject({ id: recordId, lockVersion: version, ...nameAndNotes });
export type IngredientChange = z.output<typeof ingredientChange>;

/** A record that is put away, or taken out again; nothing is deleted. */
export const archiving = z.strictObject({
  id: recordId,
  lockVersion: version,
  archived: z.enum(["yes", "no"]).transform((word) => word === "yes"),
});
export type Archiving = z.output<typeof archiving>;

/** How a change of an ingredient or a lot ended; `stale` where somebody changed it first. */
export type KeepOutcome =
  { readonly ok: true; readonly lockVersion: number } | { readonly ok: false; readonly reason: "stale" };

/** An ingredient of the club. */
export interface ClubIngredient {
  readonly id: string;
  readonly name: string;
  readonly what: KindAndFigures;
  readonly notes: string;
  readonly lockVersion: number;
  readonly isArchived: boolean;
  readonly createdByName: string;
  readonly mayWrite: boolean;
}
