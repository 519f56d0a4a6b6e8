import { requireInRange } from "../errors";
import { KILOGRAMS_PER_POUND } from "./definitions";
import { kilograms, type Kilograms } from "./quantities";
import { pounds, type Pounds } from "./us-quantities";

/**
 * Converts pounds to kilograms.
 *
 * @param mass - Mass, lb.
 * @returns Mass, kg.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * kilogramsFromPounds(pounds(10)); // 4.536
 */
export function kilogramsFromPounds(mass: Pounds): Kilograms {
  requireInRange(pounds.quantity, mass, pounds.range);
  return kilograms(mass * KILOGRAMS_PER_POUND);
}
