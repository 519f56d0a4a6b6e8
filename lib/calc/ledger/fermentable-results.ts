import { gristExtract } from "../mash";
import type { Equipment } from "./equipment";
import { rowLovibond, type GristSums } from "./grist-sums";
import type { FermentableResult } from "./ledger";
import type { Masses } from "./mass-balance";
import type { Recipe } from "./recipe";

/**
 * Finds what each fermentable gives: extract at the end of the boil, its share of it and of the colour.
 *
 * Everything mashed loses the same share to conversion and lautering; sugars in the kettle lose none.
 *
 * @returns Extract, share and colour share of each row.
 * @source Mass balance (docs/sources.md#mass-balance)
 */
export function fermentableResults(
  recipe: Recipe,
  equipment: Equipment,
  sums: GristSums,
  masses: Masses,
): FermentableResult[] {
  const mashYield = equipment.lauter.conversion.value * masses.lauterEfficiency;
  return recipe.fermentables.map((row) => {
    const extractKg = gristExtract(row) * (row.station === "mash" ? mashYield : 1);
    const colour = row.kg * rowLovibond(row.colour);
    return {
      extractKg,
      share: extractKg / masses.postBoilExtractKg,
      colourShare: sums.colourKgLovibond > 0 ? colour / sums.colourKgLovibond : 0,
    };
  });
}
