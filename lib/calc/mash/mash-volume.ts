import { requireInRange } from "../errors";
import { kilograms, litres, type Kilograms, type Litres } from "../units";

/** Space that a kilogram of dry grain takes up in the mash, L/kg. Common practice, no source. */
export const GRAIN_DISPLACEMENT = 0.67;

/**
 * Finds the space that water and grain take up together.
 *
 * @param a.water - Mash water, L, at the temperature at which the volume is wanted.
 * @param a.grist - Dry grain, kg.
 * @returns Volume of the mash, L.
 * @validRange Water up to 100 000 L.
 * @throws {@link OutOfRangeError} when the water or the grist is outside its range.
 * @source Common practice, 0.67 L/kg or 0.08 US gal/lb (docs/sources.md#trade-practice)
 * @example
 * mashVolume({ water: litres(15), grist: kilograms(5) }); // 18.35
 */
export function mashVolume(a: { readonly water: Litres; readonly grist: Kilograms }): Litres {
  requireInRange("mash water", a.water, litres.range);
  requireInRange("grist", a.grist, kilograms.range);
  return litres(a.water + GRAIN_DISPLACEMENT * a.grist);
}
