import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { usGallons, type UsGallons } from "./us-quantities";

/**
 * Converts US gallons to litres.
 *
 * @param gallons - Volume, US gal.
 * @returns Volume, L.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * litresFromUsGallons(usGallons(5)); // 18.927
 */
export function litresFromUsGallons(gallons: UsGallons): Litres {
  requireInRange(usGallons.quantity, gallons, usGallons.range);
  return litres(gallons * LITRES_PER_US_GALLON);
}
