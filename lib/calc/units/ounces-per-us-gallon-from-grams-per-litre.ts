import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND, LITRES_PER_US_GALLON, OUNCES_PER_POUND } from "./definitions";
import { gramsPerLitre, type GramsPerLitre } from "./quantities";
import { ouncesPerUsGallon, type OuncesPerUsGallon } from "./us-quantities";

/**
 * Converts grams in a litre to ounces in a US gallon, as US recipes give hop rates.
 *
 * @param rate - Mass per volume, g/L.
 * @returns Mass per volume, oz/US gal.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * ouncesPerUsGallonFromGramsPerLitre(gramsPerLitre(5)); // 0.668
 */
export function ouncesPerUsGallonFromGramsPerLitre(rate: GramsPerLitre): OuncesPerUsGallon {
  requireInRange(gramsPerLitre.quantity, rate, gramsPerLitre.range);
  return ouncesPerUsGallon((rate * OUNCES_PER_POUND * LITRES_PER_US_GALLON) / (1000 * KILOGRAMS_PER_POUND));
}
