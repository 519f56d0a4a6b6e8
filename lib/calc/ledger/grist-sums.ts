import { lovibondFromSrm, srmFromEbc } from "../units";
import { gristExtract } from "../mash";
import type { Equipment } from "./equipment";
import type { Recipe } from "./recipe";

/** What the rows of a recipe add up to; computed once, used by every pass of the balance. */
export interface GristSums {
  readonly gristKg: number;
  readonly maltWaterKg: number;
  readonly potentialKg: number;
  readonly dissolvedKg: number;
  /** Sugars and extracts that go into the kettle. */
  readonly addedKg: number;
  readonly addedExtractKg: number;
  /** kg × °L over everything, for the malt colour units. */
  readonly colourKgLovibond: number;
  readonly kettleHopsKg: number;
  readonly dryHopsKg: number;
}

/**
 * Colour of a row as maltsters state it in America; the trade's relation goes slightly negative for water-white sugars.
 *
 * @returns Colour, °L; 0 for a sugar without colour.
 */
export function rowLovibond(colourEbc: Recipe["fermentables"][number]["colour"]): number {
  return colourEbc < 0.1 ? 0 : lovibondFromSrm(srmFromEbc(colourEbc));
}

/**
 * Adds up the rows of a recipe.
 *
 * @returns Masses in kg; dissolved extract is the potential times the equipment's conversion.
 * @source Mass balance (docs/sources.md#mass-balance)
 */
export function gristSums(recipe: Recipe, equipment: Equipment): GristSums {
  let gristKg = 0;
  let maltWaterKg = 0;
  let potentialKg = 0;
  let addedKg = 0;
  let addedExtractKg = 0;
  let colourKgLovibond = 0;
  for (const row of recipe.fermentables) {
    const rowPotentialKg = gristExtract(row);
    colourKgLovibond += row.kg * rowLovibond(row.colour);
    if (row.station === "kettle") {
      addedKg += row.kg;
      addedExtractKg += rowPotentialKg;
    } else {
      gristKg += row.kg;
      maltWaterKg += row.kg * row.moisture;
      potentialKg += rowPotentialKg;
    }
  }
  let kettleHopsKg = 0;
  let dryHopsKg = 0;
  for (const hop of recipe.hops) {
    if (hop.use === "dry") dryHopsKg += hop.grams / 1000;
    else kettleHopsKg += hop.grams / 1000;
  }
  const dissolvedKg = potentialKg * equipment.lauter.conversion.value;
  return {
    gristKg,
    maltWaterKg,
    potentialKg,
    dissolvedKg,
    addedKg,
    addedExtractKg,
    colourKgLovibond,
    kettleHopsKg,
    dryHopsKg,
  };
}
