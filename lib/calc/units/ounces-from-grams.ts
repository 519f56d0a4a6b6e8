import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND, OUNCES_PER_POUND } from "./definitions";
import { grams, type Grams } from "./quantities";
import { ounces, type Ounces } from "./us-quantities";

/**
 * Converts grams to ounces of mass.
 *
 * @param mass - Mass, g.
 * @returns Mass, oz.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * ouncesFromGrams(grams(100)); // 3.527
 */
export function ouncesFromGrams(mass: Grams): Ounces {
  requireInRange(grams.quantity, mass, grams.range);
  return ounces((mass * OUNCES_PER_POUND) / (1000 * KILOGRAMS_PER_POUND));
}
