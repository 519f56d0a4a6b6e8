import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON, US_QUARTS_PER_US_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { usQuarts, type UsQuarts } from "./us-quantities";

/**
 * Converts US quarts to litres.
 *
 * @param quarts - Volume, US qt.
 * @returns Volume, L.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * litresFromUsQuarts(usQuarts(1)); // 0.946
 */
export function litresFromUsQuarts(quarts: UsQuarts): Litres {
  requireInRange(usQuarts.quantity, quarts, usQuarts.range);
  return litres((quarts * LITRES_PER_US_GALLON) / US_QUARTS_PER_US_GALLON);
}
