import { requireInRange } from "../errors";
import { wortDensity } from "../gravity";
import { kilograms, litres, type Celsius, type DegreesPlato, type Kilograms, type Litres } from "../units";

/**
 * Finds the volume of a mass of wort at a temperature.
 *
 * @param a.kg - Wort, kg.
 * @param a.plato - Extract, °P.
 * @param a.celsius - Temperature, °C.
 * @returns Volume, L.
 * @validRange 0 to 35 °P, 0 to 100 °C.
 * @throws {@link OutOfRangeError} when strength, temperature or mass is outside its range.
 * @source Definition of density; densities from docs/sources.md#kell-1975 and docs/sources.md#nbs-440-1942
 * @example
 * wortVolume({ kg: kilograms(10), plato: degreesPlato(0), celsius: celsius(20) }); // 10.018
 */
export function wortVolume(a: {
  readonly kg: Kilograms;
  readonly plato: DegreesPlato;
  readonly celsius: Celsius;
}): Litres {
  requireInRange("wort", a.kg, kilograms.range);
  return litres(a.kg / wortDensity({ plato: a.plato, celsius: a.celsius }));
}
