import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND, OUNCES_PER_POUND } from "./definitions";
import { grams, type Grams } from "./quantities";
import { ounces, type Ounces } from "./us-quantities";

/**
 * Converts ounces of mass to grams.
 *
 * @param mass - Mass, oz.
 * @returns Mass, g.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * gramsFromOunces(ounces(1)); // 28.35
 */
export function gramsFromOunces(mass: Ounces): Grams {
  requireInRange(ounces.quantity, mass, ounces.range);
  return grams((mass * 1000 * KILOGRAMS_PER_POUND) / OUNCES_PER_POUND);
}
