import type { DegreesPlato, Litres } from "../units";
import { degreesPlato } from "../units";
import { blend } from "./blend";

/**
 * Gives the strength of wort after water was added to it.
 *
 * @param a.litres - Wort, L at 20 °C.
 * @param a.plato - Its strength, °P.
 * @param a.waterLitres - Water, L at 20 °C.
 * @returns Strength, °P.
 * @validRange 0 to 35 °P.
 * @throws {@link OutOfRangeError} when an amount is outside its range or there is neither wort nor water.
 * @source Mass balance (docs/sources.md#mass-balance)
 * @example
 * platoAfterDilution({ litres: litres(20), plato: degreesPlato(15), waterLitres: litres(4) }); // 12.62
 */
export function platoAfterDilution(a: {
  readonly litres: Litres;
  readonly plato: DegreesPlato;
  readonly waterLitres: Litres;
}): DegreesPlato {
  return blend([
    { litres: a.litres, plato: a.plato },
    { litres: a.waterLitres, plato: degreesPlato(0) },
  ]).plato;
}
