import { litres, milligramsPerLitre } from "../units";
import {
  addIons,
  alkalinityFromBicarbonate,
  ionsFromAcids,
  ionsFromSalts,
  residualAlkalinity,
  type Ions,
} from "../water";
import type { WaterTreatment } from "./recipe";

/** Water with its salts dissolved. */
export interface BrewingWater {
  /** mg/L. */
  readonly ions: Ions;
  /** mg/L as CaCO3. */
  readonly residualAlkalinity: number;
}

/** A handful of salt in no water dissolves to nothing that the ranges of the ions hold; said before it is tried. */
const MOST_SALT_MG_PER_L = milligramsPerLitre.range.max / 2;

/**
 * Finds the ions of the treated water and its residual alkalinity.
 *
 * @returns The water; or the salt in it, mg/L, that is more than any brewing water holds.
 * @source docs/sources.md#iupac-2021, docs/sources.md#kolbach-1953
 */
export function brewingWater(
  water: WaterTreatment,
  hotWaterL: number,
): ({ readonly ok: true } & BrewingWater) | { readonly ok: false; readonly mgPerL: number } {
  const saltMgPerL = (1000 * Object.values(water.salts).reduce((sum: number, grams) => sum + grams, 0)) / hotWaterL;
  if (saltMgPerL > MOST_SALT_MG_PER_L) return { ok: false, mgPerL: saltMgPerL };
  const salts = ionsFromSalts({ litres: litres(hotWaterL), grams: water.salts });
  const acids = water.acid === null ? [] : [{ acid: water.acid.solution, ml: water.acid.ml }];
  const ions = addIons({
    source: addIons({ source: water.source, salts }),
    salts: ionsFromAcids({ litres: litres(hotWaterL), acids }),
  });
  return {
    ok: true,
    ions,
    residualAlkalinity: residualAlkalinity({
      calciumMgL: ions.calcium,
      magnesiumMgL: ions.magnesium,
      alkalinityMgLCaCO3: alkalinityFromBicarbonate(ions.bicarbonate),
    }),
  };
}
