import type { Fraction, Grams, Ibu, Litres, SpecificGravity } from "../units";
import { equivalentBoilMinutes } from "./equivalent-boil-minutes";
import { ibuFromEquivalentMinutes } from "./ibu-from-equivalent-minutes";
import type { TemperatureCurve } from "./temperature-curve";

/**
 * Gives the bitterness of hops that go in after flame-out, from the temperatures they see until the wort is cold.
 *
 * No flat rate for a stand: 20 min held at 80 °C after a fast chill are 3.3 min of boil, 20 min of cooling from 100 to 80 °C
 * are 9.4.
 *
 * @param a.alphaFraction - Alpha acids, fraction of the hops.
 * @param a.grams - Hops, g.
 * @param a.litres - Finished wort, L.
 * @param a.sg - Gravity of the wort.
 * @param a.curve - Minutes and °C from the addition to the cold wort, with straight lines between.
 * @returns Bitterness, IBU.
 * @validRange As `equivalentBoilMinutes`; up to 240 equivalent minutes and 1000 IBU.
 * @throws {@link OutOfRangeError} when an argument, the equivalent time or the bitterness is outside its range.
 * @source Tinseth 1997 (docs/sources.md#tinseth-1997); Malowicki and Shellhammer 2005 (docs/sources.md#malowicki-shellhammer-2005)
 * @example
 * standIbu({ alphaFraction: fraction(0.1), grams: grams(50), litres: litres(20), sg: specificGravity(1.05), curve: [[0, 80], [20, 80]] });
 * // 7.86
 */
export function standIbu({
  curve,
  ...addition
}: {
  readonly alphaFraction: Fraction;
  readonly grams: Grams;
  readonly litres: Litres;
  readonly sg: SpecificGravity;
  readonly curve: TemperatureCurve;
}): Ibu {
  return ibuFromEquivalentMinutes({ ...addition, equivalentMinutes: equivalentBoilMinutes({ curve }) });
}
