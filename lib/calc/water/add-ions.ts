import { requireIons } from "./require-ions";
import { mapIons, type Ions } from "./ions";

/**
 * Adds the ions of dissolved salts to those of a water.
 *
 * @returns Concentrations, mg/L.
 * @throws {@link OutOfRangeError} when an ion or a sum is outside 0 to 10 000 mg/L.
 * @source Mass balance (docs/sources.md#mass-balance)
 * @example
 * addIons({ source: tapWater, salts: ionsFromSalts({ litres: litres(20), grams: { gypsum: grams(4) } }) });
 */
export function addIons({ source, salts }: { readonly source: Ions; readonly salts: Ions }): Ions {
  requireIons(source);
  requireIons(salts);
  return mapIons((ion) => source[ion] + salts[ion]);
}
