import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON, US_QUARTS_PER_US_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { usQuarts, type UsQuarts } from "./us-quantities";

/**
 * Converts litres to US quarts.
 *
 * @param volume - Volume, L.
 * @returns Volume, US qt.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * usQuartsFromLitres(litres(1)); // 1.057
 */
export function usQuartsFromLitres(volume: Litres): UsQuarts {
  requireInRange(litres.quantity, volume, litres.range);
  return usQuarts((volume * US_QUARTS_PER_US_GALLON) / LITRES_PER_US_GALLON);
}
