import { requireInRange } from "../errors";
import { METRES_PER_FOOT } from "./definitions";
import { metres, type Metres } from "./quantities";
import { feet, type Feet } from "./us-quantities";

/**
 * Converts feet to metres.
 *
 * @param height - Altitude, ft.
 * @returns Altitude, m.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * metresFromFeet(feet(5280)); // 1609
 */
export function metresFromFeet(height: Feet): Metres {
  requireInRange(feet.quantity, height, feet.range);
  return metres(height * METRES_PER_FOOT);
}
