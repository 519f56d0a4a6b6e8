import { requireInRange } from "../errors";
import { kilograms, litres, type Celsius, type DegreesPlato, type Kilograms, type Litres } from "../units";
import { WORT_RANGE, wortDensity } from "./wort-density";

/**
 * Weighs the extract in a volume of wort.
 *
 * @param a.litres - Volume at the temperature of the wort, L.
 * @param a.plato - Strength, °P; it does not depend on temperature.
 * @param a.celsius - Temperature at which the volume was read, °C.
 * @returns Extract, kg.
 * @validRange 0 to 35 °P, 0 to 100 °C.
 * @throws {@link OutOfRangeError} when volume, strength or temperature is outside its range.
 * @source Mass balance (docs/sources.md#mass-balance), density of `wortDensity`
 * @example
 * extractMass({ litres: litres(20), plato: degreesPlato(12), celsius: celsius(20) }); // 2.511
 */
export function extractMass(a: {
  readonly litres: Litres;
  readonly plato: DegreesPlato;
  readonly celsius: Celsius;
}): Kilograms {
  requireInRange("volume", a.litres, litres.range);
  requireInRange("extract", a.plato, WORT_RANGE.plato);
  return kilograms((a.litres * wortDensity(a) * a.plato) / 100);
}
