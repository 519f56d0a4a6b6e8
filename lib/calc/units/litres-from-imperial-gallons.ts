import { requireInRange } from "../errors";
import { LITRES_PER_IMPERIAL_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { imperialGallons, type ImperialGallons } from "./us-quantities";

/**
 * Converts imperial gallons to litres.
 *
 * @param gallons - Volume, imp gal.
 * @returns Volume, L.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * litresFromImperialGallons(imperialGallons(5)); // 22.730
 */
export function litresFromImperialGallons(gallons: ImperialGallons): Litres {
  requireInRange(imperialGallons.quantity, gallons, imperialGallons.range);
  return litres(gallons * LITRES_PER_IMPERIAL_GALLON);
}
