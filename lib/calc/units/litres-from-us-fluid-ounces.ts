import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON, US_FLUID_OUNCES_PER_US_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { usFluidOunces, type UsFluidOunces } from "./us-quantities";

/**
 * Converts US fluid ounces to litres.
 *
 * @param ounces - Volume, US fl oz.
 * @returns Volume, L.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * litresFromUsFluidOunces(usFluidOunces(12)); // 0.355
 */
export function litresFromUsFluidOunces(ounces: UsFluidOunces): Litres {
  requireInRange(usFluidOunces.quantity, ounces, usFluidOunces.range);
  return litres((ounces * LITRES_PER_US_GALLON) / US_FLUID_OUNCES_PER_US_GALLON);
}
