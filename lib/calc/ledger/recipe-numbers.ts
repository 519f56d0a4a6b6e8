import type { Range } from "../errors";
import {
  celsius,
  ebc,
  fraction,
  grams,
  kilograms,
  litres,
  litresPerKilogram,
  milliequivalentsPerKilogramPh,
  milligramsPerLitre,
  millilitres,
  millionPerMlPlato,
  minutes,
  volumesCo2,
} from "../units";
import { SOLUBILITY_RANGE } from "../carbonation/gauge-pressure";
import { PRIMED_RANGE } from "../carbonation/priming-sugar";
import type { Ions } from "../water";
import { DISTILLED_WATER_PH_RANGE } from "../water/mashed-malt";
import type {
  Fermentable,
  HopAddition,
  HopStand,
  MaltAcidity,
  MashAcid,
  MashStep,
  Packaging,
  Recipe,
  Yeast,
} from "./recipe";

/** The fields of a part that hold a number, or nothing. */
export type NumberField<T> = { readonly [K in keyof T]: T[K] extends number | null ? K : never }[keyof T];

/** Numbers of a part: field, what a message calls it, and the range that is accepted. */
export type Numbers<T> = readonly (readonly [field: NumberField<T> & string, label: string, range: Range])[];

/** A week, in minutes: longer than any rest or boil. */
const TIME: Range = { ...minutes.range, max: 10_080 };
/** Between ice and the boil. */
const WARMTH: Range = { ...celsius.range, min: 0, max: 100 };
/** As far as the colour of a malt is known in all three of its units. */
export const FERMENTABLE_COLOUR_RANGE: Range = { ...ebc.range, max: 3900 };

/** What a recipe and an intention have in common. */
export type Process = Pick<Recipe, "thickness" | "mashes" | "boil" | "mash" | "stand" | "yeast" | "packaging">;

export const MASHES_RANGE: Range = { unit: "", min: 1, max: 2 };

export const PROCESS_NUMBERS: Numbers<Process> = [
  ["thickness", "mash thickness", litresPerKilogram.range],
  ["mashes", "number of mashes", MASHES_RANGE],
  ["boil", "boil", TIME],
];

export const VOLUME_NUMBERS: Numbers<Recipe> = [
  ["intoFermenter", "volume into the fermenter", { ...litres.range, min: 0.001 }],
  ["topUp", "water after the boil", litres.range],
];

export const MASH_STEP_NUMBERS: Numbers<MashStep> = [
  ["celsius", "mash temperature", WARMTH],
  ["minutes", "length of a rest", TIME],
];

export const STAND_NUMBERS: Numbers<HopStand> = [
  ["celsius", "stand temperature", WARMTH],
  ["minutes", "length of the stand", TIME],
];

export const FERMENTABLE_NUMBERS: Numbers<Fermentable> = [
  ["kg", "fermentable", kilograms.range],
  ["extract", "extract of the dry substance", fraction.range],
  ["moisture", "moisture", fraction.range],
  ["colour", "colour of a fermentable", FERMENTABLE_COLOUR_RANGE],
  ["fermentability", "fermentability", fraction.range],
];

export const ACIDITY_NUMBERS: Numbers<MaltAcidity> = [
  ["distilledWaterPh", "distilled-water pH of a malt", DISTILLED_WATER_PH_RANGE],
  ["buffering", "buffering of a malt", milliequivalentsPerKilogramPh.range],
  ["lacticFraction", "lactic acid in a malt", fraction.range],
];

export const HOP_NUMBERS: Numbers<HopAddition> = [
  ["grams", "hop addition", grams.range],
  ["alpha", "alpha acids", fraction.range],
  ["minutes", "hop time", TIME],
];

export const SOURCE_NUMBERS: Numbers<Ions> = [
  ["calcium", "calcium", milligramsPerLitre.range],
  ["magnesium", "magnesium", milligramsPerLitre.range],
  ["sodium", "sodium", milligramsPerLitre.range],
  ["sulfate", "sulfate", milligramsPerLitre.range],
  ["chloride", "chloride", milligramsPerLitre.range],
  ["bicarbonate", "bicarbonate", milligramsPerLitre.range],
];

export const SALT_RANGE = grams.range;

export const ACID_NUMBERS: Numbers<MashAcid> = [["ml", "acid in the mash water", millilitres.range]];

export const YEAST_NUMBERS: Numbers<Yeast> = [
  ["attenuationLow", "attenuation, low", fraction.range],
  ["attenuationHigh", "attenuation, high", fraction.range],
  ["pitch", "pitch rate", millionPerMlPlato.range],
  ["celsius", "fermentation temperature", { ...celsius.range, min: 0, max: 60 }],
];

export const PACKAGING_NUMBERS: Numbers<Packaging> = [
  ["carbonation", "carbonation", PRIMED_RANGE],
  ["warmest", "warmest temperature since fermentation", SOLUBILITY_RANGE.celsius],
  ["rated", "carbonation that the container is made for", { ...volumesCo2.range, min: 0.1 }],
];
