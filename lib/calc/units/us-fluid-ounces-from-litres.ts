import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON, US_FLUID_OUNCES_PER_US_GALLON } from "./definitions";
import { litres, type Litres } from "./quantities";
import { usFluidOunces, type UsFluidOunces } from "./us-quantities";

/**
 * Converts litres to US fluid ounces.
 *
 * @param volume - Volume, L.
 * @returns Volume, US fl oz.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * usFluidOuncesFromLitres(litres(0.5)); // 16.91
 */
export function usFluidOuncesFromLitres(volume: Litres): UsFluidOunces {
  requireInRange(litres.quantity, volume, litres.range);
  return usFluidOunces((volume * US_FLUID_OUNCES_PER_US_GALLON) / LITRES_PER_US_GALLON);
}
