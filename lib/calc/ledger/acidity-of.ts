import { grams, litres, ph } from "../units";
import {
  KOLBACH_REACTION,
  maltAcidity,
  maltKindFromColour,
  mashPh,
  SALTS,
  type Mash,
  type MashedMalt,
  type Salt,
  type SaltGrams,
} from "../water";
import { waterL, type Masses } from "./mass-balance";
import type { Fermentable, Recipe } from "./recipe";

/** No recipe states the pH of its water; a water in balance with its lime is near this, and it hardly matters. */
const SOURCE_PH = ph(7.5);

/**
 * Tells how a fermentable moves the pH of the mash.
 *
 * @returns What its row states, or the usual figures of its kind and colour.
 * @source Common practice for the guess (docs/sources.md#trade-practice)
 */
export function acidityOf(row: Fermentable): Pick<MashedMalt, "distilledWaterPh" | "buffering" | "lacticFraction"> {
  return row.acidity ?? maltAcidity({ kind: maltKindFromColour(row).kind, colour: row.colour });
}

/** A gram of water dissolves nothing. */
const LEAST_WATER_L = 0.001;

/**
 * Gathers what decides the pH of a mash.
 *
 * Salts are dissolved in all the hot water, and the mash takes its share of it; the acid is all in the mash.
 *
 * @returns The mash as `mashPh` takes it; null when no grain or no water is mashed.
 * @source docs/sources.md#kolbach-1953 for calcium and magnesium
 */
export function mashOf(recipe: Recipe, masses: Masses): Mash | null {
  const grist = recipe.fermentables.filter((row) => row.station === "mash" && row.kg > 0);
  const mashL = waterL(masses.mashWaterKg);
  if (grist.length === 0 || mashL < LEAST_WATER_L) return null;
  const share = masses.mashWaterKg / (masses.mashWaterKg + masses.spargeKg);
  const { source, salts, acid } = recipe.water;
  return {
    water: {
      litres: litres(mashL),
      ions: source,
      ph: SOURCE_PH,
      salts: partOf(salts, share),
      carbonDioxide: "kept",
    },
    grist: grist.map((row) => ({ kg: row.kg, ...acidityOf(row) })),
    hardnessReaction: KOLBACH_REACTION,
    acids: acid === null ? [] : [{ acid: acid.solution, ml: acid.ml }],
  };
}

function partOf(salts: SaltGrams, share: number): SaltGrams {
  const part: { -readonly [salt in Salt]?: SaltGrams[salt] } = {};
  for (const salt of SALTS) {
    const weight = salts[salt];
    if (weight !== undefined) part[salt] = grams(weight * share);
  }
  return part;
}

/**
 * Finds the pH of the mash, read at room temperature.
 *
 * @returns pH; null without a mash or where it settles at no pH that a malt was titrated at.
 * @source docs/sources.md#delange-2015, through `mashPh`
 */
export function phOfMash(recipe: Recipe, masses: Masses): number | null {
  const mash = mashOf(recipe, masses);
  const found = mash === null ? null : mashPh(mash);
  return found?.ok === true ? found.ph : null;
}
