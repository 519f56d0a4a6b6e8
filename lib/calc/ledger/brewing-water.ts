import { litres } from "../units";
import { addIons, alkalinityFromBicarbonate, ionsFromSalts, residualAlkalinity, type Ions } from "../water";
import type { WaterTreatment } from "./recipe";

/**
 * Finds the ions of the treated water and its residual alkalinity.
 *
 * @returns Concentrations, mg/L; residual alkalinity, mg/L as CaCO3.
 * @source docs/sources.md#iupac-2021, docs/sources.md#kolbach-1953
 */
export function brewingWater(
  water: WaterTreatment,
  hotWaterL: number,
): { readonly ions: Ions; readonly residualAlkalinity: number } {
  const salts = ionsFromSalts({ litres: litres(hotWaterL), grams: water.salts });
  const ions = addIons({ source: water.source, salts });
  return {
    ions,
    residualAlkalinity: residualAlkalinity({
      calciumMgL: ions.calcium,
      magnesiumMgL: ions.magnesium,
      alkalinityMgLCaCO3: alkalinityFromBicarbonate(ions.bicarbonate),
    }),
  };
}
