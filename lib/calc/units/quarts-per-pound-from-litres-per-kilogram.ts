import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND, LITRES_PER_US_GALLON, US_QUARTS_PER_US_GALLON } from "./definitions";
import { litresPerKilogram, type LitresPerKilogram } from "./quantities";
import { quartsPerPound, type QuartsPerPound } from "./us-quantities";

/**
 * Converts litres for each kilogram to quarts for each pound, as US recipes give mash thickness.
 *
 * @param ratio - Volume per mass, L/kg.
 * @returns Volume per mass, US qt/lb.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * quartsPerPoundFromLitresPerKilogram(litresPerKilogram(3)); // 1.438
 */
export function quartsPerPoundFromLitresPerKilogram(ratio: LitresPerKilogram): QuartsPerPound {
  requireInRange(litresPerKilogram.quantity, ratio, litresPerKilogram.range);
  return quartsPerPound((ratio * US_QUARTS_PER_US_GALLON * KILOGRAMS_PER_POUND) / LITRES_PER_US_GALLON);
}
