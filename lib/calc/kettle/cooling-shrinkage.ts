import { wortDensity } from "../gravity";
import type { Celsius, DegreesPlato } from "../units";

/**
 * Finds by how much wort shrinks when it cools.
 *
 * @param a.plato - Extract, °P.
 * @param a.from - Temperature before, °C.
 * @param a.to - Temperature after, °C.
 * @returns Fraction of the hot volume that is lost, negative when it warms.
 * @validRange 0 to 35 °P, 0 to 100 °C.
 * @throws {@link OutOfRangeError} when strength or temperature is outside its range.
 * @source Conservation of mass; water densities of docs/sources.md#kell-1975
 * @example
 * coolingShrinkage({ plato: degreesPlato(0), from: celsius(100), to: celsius(20) }); // 0.0399
 */
export function coolingShrinkage(a: {
  readonly plato: DegreesPlato;
  readonly from: Celsius;
  readonly to: Celsius;
}): number {
  return 1 - wortDensity({ plato: a.plato, celsius: a.from }) / wortDensity({ plato: a.plato, celsius: a.to });
}
