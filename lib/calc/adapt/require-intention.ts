import { requireInRange, type Range } from "../errors";
import {
  ACIDITY_NUMBERS,
  FERMENTABLE_NUMBERS,
  HOP_NUMBERS,
  SOURCE_NUMBERS,
  type Numbers,
} from "../ledger/recipe-numbers";
import { requireNumbers, requireProcess } from "../ledger/require-brew";
import { degreesPlato, ebc, fraction, gramsPerLitre, ibu, litres, milligramsPerLitre, ph } from "../units";
import type { IntendedFermentable, IntendedHop, Intention } from "./intention";

const VOLUME: Range = { ...litres.range, min: 0.1 };

export const INTENTION_NUMBERS: Numbers<Intention> = [
  ["intoFermenter", "volume into the fermenter", VOLUME],
  ["originalExtract", "original extract", { ...degreesPlato.range, min: 0, max: 35 }],
  ["colour", "colour of the beer", { ...ebc.range, max: 3900 }],
];

// The same numbers as in a recipe, without the amounts, which are what is solved for.
export const INTENDED_FERMENTABLE_NUMBERS: Numbers<IntendedFermentable> = [
  ["share", "share of the extract", fraction.range],
  ...(FERMENTABLE_NUMBERS.filter(([field]) => field !== "kg") as Numbers<IntendedFermentable>),
];
export const INTENDED_HOP_NUMBERS: Numbers<IntendedHop> = [
  ["ibu", "bitterness of an addition", ibu.range],
  ["gramsPerLitre", "dose of a hop", gramsPerLitre.range],
  ...(HOP_NUMBERS.filter(([field]) => field !== "grams") as Numbers<IntendedHop>),
];

export const SALT_DOSE_RANGE: Range = milligramsPerLitre.range;
export const MASH_PH_RANGE: Range = ph.range;
/** Held by everybody, or each kettle's own. */
export const HELD_VOLUME_RANGE: Range = VOLUME;

/**
 * Refuses an intention that holds anything but numbers in their ranges.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireIntention(intention: Intention): void {
  requireNumbers(intention, INTENTION_NUMBERS);
  requireProcess(intention);
  for (const row of intention.fermentables) {
    requireNumbers(row, INTENDED_FERMENTABLE_NUMBERS);
    if (row.acidity !== null) requireNumbers(row.acidity, ACIDITY_NUMBERS);
  }
  for (const hop of intention.hops) requireNumbers(hop, INTENDED_HOP_NUMBERS);
  const { source, ions, saltsMgPerLitre, acid } = intention.water;
  requireNumbers(source, SOURCE_NUMBERS);
  requireNumbers(ions, SOURCE_NUMBERS);
  for (const dose of Object.values(saltsMgPerLitre ?? {})) requireInRange("dose of a salt", dose, SALT_DOSE_RANGE);
  if (acid !== null) requireInRange("mash pH", acid.mashPh, MASH_PH_RANGE);
}
