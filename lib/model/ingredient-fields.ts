import {
  billionCells,
  celsius,
  defineQuantity,
  fraction,
  grams,
  kilograms,
  kilogramsPerLitre,
  millilitres,
} from "@/lib/calc/units";
import { measuredField, type MeasuredField } from "./field";
import type { IngredientKind } from "./ingredient-kinds";
import { FERMENTABLE_FIELDS, YEAST_FIELDS } from "./recipe-fields";

/** Packs of yeast are counted, not weighed. */
const packs = defineQuantity("packs", { unit: "pcs", min: 0, max: 10_000 });

/** Numbers of an ingredient or a lot that no recipe has. */
export const HOP_INGREDIENT_FIELDS = {
  alphaLow: measuredField("Alpha acids, low", "fraction", fraction, { min: 0, max: 0.3 }),
  alphaHigh: measuredField("Alpha acids, high", "fraction", fraction, { min: 0, max: 0.3 }),
  lossIn6Months: measuredField("Alpha acids lost in six months at 20 °C", "fraction", fraction, { min: 0, max: 0.95 }),
} as const;

export const FERMENTABLE_INGREDIENT_FIELDS = {
  extract: FERMENTABLE_FIELDS.extract,
  moisture: FERMENTABLE_FIELDS.moisture,
  colour: FERMENTABLE_FIELDS.colour,
  fermentability: FERMENTABLE_FIELDS.fermentability,
  distilledWaterPh: FERMENTABLE_FIELDS.distilledWaterPh,
  buffering: FERMENTABLE_FIELDS.buffering,
  lacticFraction: FERMENTABLE_FIELDS.lacticFraction,
} as const;

export const YEAST_INGREDIENT_FIELDS = {
  attenuationLow: YEAST_FIELDS.attenuationLow,
  attenuationHigh: YEAST_FIELDS.attenuationHigh,
  celsiusLow: measuredField("Fermentation temperature, low", "temperature", celsius, { min: 0, max: 45 }),
  celsiusHigh: measuredField("Fermentation temperature, high", "temperature", celsius, { min: 0, max: 45 }),
} as const;

export const ACID_INGREDIENT_FIELDS = {
  massFraction: measuredField("Strength", "fraction", fraction, { min: 0.001, max: 1 }),
  density: measuredField("Density", null, kilogramsPerLitre, { min: 0.9, max: 2 }),
} as const;

export const LOT_STORAGE_FIELDS = {
  storedAt: measuredField("Storage temperature", "temperature", celsius, { min: -30, max: 40 }),
  cells: measuredField("Living cells in a pack when packed", "cells", billionCells, { min: 0.1, max: 1_000_000 }),
} as const;

/** How much there can be of a lot, by kind; each kind is kept in one unit. */
export const ON_HAND_FIELDS: Readonly<Record<IngredientKind, MeasuredField>> = {
  fermentable: measuredField("On hand", "mass", kilograms, { min: 0, max: 100_000 }),
  hop: measuredField("On hand", "grams", grams, { min: 0, max: 1_000_000 }),
  yeast: measuredField("On hand", null, packs),
  salt: measuredField("On hand", null, grams, { min: 0, max: 100_000 }),
  acid: measuredField("On hand", null, millilitres, { min: 0, max: 100_000 }),
};
