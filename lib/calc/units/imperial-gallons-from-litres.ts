import { requireInRange } from "../errors";
import { LITRES_PER_IMPERIAL_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { imperialGallons, type ImperialGallons } from "./us-quantities";

/**
 * Converts litres to imperial gallons.
 *
 * @param volume - Volume, L.
 * @returns Volume, imp gal.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * imperialGallonsFromLitres(litres(20)); // 4.399
 */
export function imperialGallonsFromLitres(volume: Litres): ImperialGallons {
  requireInRange(litres.quantity, volume, litres.range);
  return imperialGallons(volume / LITRES_PER_IMPERIAL_GALLON);
}
