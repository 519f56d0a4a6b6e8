import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { usGallons, type UsGallons } from "./us-quantities";

/**
 * Converts litres to US gallons.
 *
 * @param volume - Volume, L.
 * @returns Volume, US gal.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * usGallonsFromLitres(litres(20)); // 5.283
 */
export function usGallonsFromLitres(volume: Litres): UsGallons {
  requireInRange(litres.quantity, volume, litres.range);
  return usGallons(volume / LITRES_PER_US_GALLON);
}
