import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND, LITRES_PER_US_GALLON, US_QUARTS_PER_US_GALLON } from "./definitions";
import { litresPerKilogram, type LitresPerKilogram } from "./quantities";
import { quartsPerPound, type QuartsPerPound } from "./us-quantities";

/**
 * Converts quarts for each pound, as US recipes give mash thickness, to litres for each kilogram.
 *
 * @param ratio - Volume per mass, US qt/lb.
 * @returns Volume per mass, L/kg.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * litresPerKilogramFromQuartsPerPound(quartsPerPound(1.25)); // 2.608
 */
export function litresPerKilogramFromQuartsPerPound(ratio: QuartsPerPound): LitresPerKilogram {
  requireInRange(quartsPerPound.quantity, ratio, quartsPerPound.range);
  return litresPerKilogram((ratio * LITRES_PER_US_GALLON) / (US_QUARTS_PER_US_GALLON * KILOGRAMS_PER_POUND));
}
