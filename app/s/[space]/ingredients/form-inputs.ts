import { ACIDS, SALTS } from "@/lib/calc/water";
import type { MeasuredField } from "@/lib/model/field";
import { FERMENTABLE_KINDS } from "@/lib/model/ingredient";
import {
  ACID_INGREDIENT_FIELDS,
  FERMENTABLE_INGREDIENT_FIELDS,
  HOP_INGREDIENT_FIELDS,
  LOT_STORAGE_FIELDS,
  YEAST_INGREDIENT_FIELDS,
} from "@/lib/model/ingredient-fields";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import { HOP_PACKAGING } from "@/lib/model/ingredient-lot";
import { FERMENTABLE_FIELDS, HOP_FIELDS, SALT_FIELDS } from "@/lib/model/recipe-fields";

/** One control of a form: a number with its field, one of a few words, or a day. Its name is that of the figure. */
export type FormInput = { readonly name: string; readonly isOptional: boolean } & (
  | { readonly type: "number"; readonly field: MeasuredField }
  | { readonly type: "choice"; readonly label: string; readonly options: readonly Choice[] }
  | { readonly type: "day"; readonly label: string }
);

interface Choice {
  readonly value: string;
  readonly text: string;
}

const number = (name: string, field: MeasuredField, isOptional = false): FormInput => ({
  name,
  isOptional,
  type: "number",
  field,
});

function choice(name: string, label: string, options: readonly string[], isOptional = false): FormInput {
  return { name, isOptional, type: "choice", label, options: options.map((value) => ({ value, text: value })) };
}

const day = (name: string, label: string): FormInput => ({ name, isOptional: true, type: "day", label });

const { extract, moisture, colour, fermentability, distilledWaterPh, buffering, lacticFraction } =
  FERMENTABLE_INGREDIENT_FIELDS;
const { attenuationLow, attenuationHigh, celsiusLow, celsiusHigh } = YEAST_INGREDIENT_FIELDS;
const { alphaLow, alphaHigh, lossIn6Months } = HOP_INGREDIENT_FIELDS;
const { massFraction, density } = ACID_INGREDIENT_FIELDS;

/** What is asked of an ingredient, by its kind. */
export const INGREDIENT_INPUTS: Readonly<Record<IngredientKind, readonly FormInput[]>> = {
  fermentable: [
    choice("kind", "Kind of fermentable", FERMENTABLE_KINDS),
    choice("station", "Where it goes in", ["mash", "kettle"]),
    number("extract", extract),
    number("moisture", moisture),
    number("colour", colour),
    number("fermentability", fermentability, true),
    number("distilledWaterPh", distilledWaterPh, true),
    number("buffering", buffering, true),
    number("lacticFraction", lacticFraction, true),
  ],
  hop: [number("alphaLow", alphaLow), number("alphaHigh", alphaHigh), number("lossIn6Months", lossIn6Months, true)],
  yeast: [
    number("attenuationLow", attenuationLow),
    number("attenuationHigh", attenuationHigh),
    number("celsiusLow", celsiusLow),
    number("celsiusHigh", celsiusHigh),
  ],
  salt: [
    {
      name: "salt",
      isOptional: false,
      type: "choice",
      label: "Salt",
      options: SALTS.map((salt) => ({ value: salt, text: SALT_FIELDS[salt].label })),
    },
  ],
  acid: [choice("acid", "Acid", ACIDS), number("massFraction", massFraction), number("density", density)],
};

const storedAt = number("storedAt", LOT_STORAGE_FIELDS.storedAt, true);

/** What is asked of a lot, by its kind; almost everything may be unknown. */
export const LOT_INPUTS: Readonly<Record<IngredientKind, readonly FormInput[]>> = {
  fermentable: [
    number("extract", FERMENTABLE_FIELDS.extract, true),
    number("moisture", FERMENTABLE_FIELDS.moisture, true),
    number("colour", FERMENTABLE_FIELDS.colour, true),
  ],
  hop: [
    number("alpha", HOP_FIELDS.alpha, true),
    day("analysedOn", "Harvested or analysed on"),
    storedAt,
    choice("packaging", "Packaging", HOP_PACKAGING, true),
  ],
  yeast: [
    choice("form", "Form of the yeast", ["dry", "liquid"]),
    number("cells", LOT_STORAGE_FIELDS.cells, true),
    day("packedOn", "Packed on"),
    storedAt,
  ],
  salt: [],
  acid: [number("massFraction", massFraction, true), number("density", density, true)],
};
