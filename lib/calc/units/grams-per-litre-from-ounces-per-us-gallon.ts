import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND, LITRES_PER_US_GALLON, OUNCES_PER_POUND } from "./definitions";
import { gramsPerLitre, type GramsPerLitre } from "./quantities";
import { ouncesPerUsGallon, type OuncesPerUsGallon } from "./us-quantities";

/**
 * Converts ounces in a US gallon, as US recipes give hop rates, to grams in a litre.
 *
 * @param rate - Mass per volume, oz/US gal.
 * @returns Mass per volume, g/L.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * gramsPerLitreFromOuncesPerUsGallon(ouncesPerUsGallon(1)); // 7.489
 */
export function gramsPerLitreFromOuncesPerUsGallon(rate: OuncesPerUsGallon): GramsPerLitre {
  requireInRange(ouncesPerUsGallon.quantity, rate, ouncesPerUsGallon.range);
  return gramsPerLitre((rate * 1000 * KILOGRAMS_PER_POUND) / (OUNCES_PER_POUND * LITRES_PER_US_GALLON));
}
