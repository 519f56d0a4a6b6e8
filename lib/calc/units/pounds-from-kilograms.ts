import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND } from "./definitions";
import { kilograms, type Kilograms } from "./quantities";
import { pounds, type Pounds } from "./us-quantities";

/**
 * Converts kilograms to pounds.
 *
 * @param mass - Mass, kg.
 * @returns Mass, lb.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * poundsFromKilograms(kilograms(5)); // 11.02
 */
export function poundsFromKilograms(mass: Kilograms): Pounds {
  requireInRange(kilograms.quantity, mass, kilograms.range);
  return pounds(mass / KILOGRAMS_PER_POUND);
}
