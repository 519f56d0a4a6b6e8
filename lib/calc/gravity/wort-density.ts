import { requireInRange } from "../errors";
import { kilogramsPerLitre, type Celsius, type DegreesPlato, type KilogramsPerLitre } from "../units";
import { EXTRACT_RANGE } from "./extract-range";
import { densityRise, densityRiseChange } from "./sucrose-density";
import { waterDensity, WATER_DENSITY_RANGE } from "./water-density";

/** Wort, which holds real extract. */
export const WORT_RANGE = {
  plato: { unit: "°P", min: 0, max: 35 },
  celsius: WATER_DENSITY_RANGE,
} as const;

/**
 * Gives the density of wort, taken as a solution of as much sucrose, or of beer by its apparent extract.
 *
 * Water by Kell, the rise at 20 °C by the table on which the Plato scale rests, its change with temperature by the
 * polynomial of the sugar industry. Malt sugars expand nearly as sucrose does; hop and protein are not counted. Apparent
 * extract is defined by density, so beer counts by it as wort does by its extract; that holds at 20 °C, and alcohol makes
 * warm beer a little lighter than this.
 *
 * @returns Density in vacuum, kg/L: within 0.00002 of the table at 20 °C, within about 0.0003 when hot.
 * @validRange −9 to 35 °P, 0 to 100 °C.
 * @throws {@link OutOfRangeError} when strength or temperature is outside the valid range.
 * @source NBS Circular C440 1942, table 113 (docs/sources.md#nbs-440-1942); Bubník et al. 1995, page 164
 * (docs/sources.md#bubnik-1995); Kell 1975 (docs/sources.md#kell-1975)
 * @example
 * wortDensity({ plato: degreesPlato(12), celsius: celsius(20) }); // 1.04643
 */
export function wortDensity(a: { readonly plato: DegreesPlato; readonly celsius: Celsius }): KilogramsPerLitre {
  const plato = requireInRange("extract", a.plato, EXTRACT_RANGE);
  const water = waterDensity(a.celsius);
  return kilogramsPerLitre(water + densityRise(plato) + densityRiseChange(plato, a.celsius));
}
