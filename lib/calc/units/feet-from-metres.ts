import { requireInRange } from "../errors";
import { METRES_PER_FOOT } from "./definitions";
import { metres, type Metres } from "./quantities";
import { feet, type Feet } from "./us-quantities";

/**
 * Converts metres to feet.
 *
 * @param height - Altitude, m.
 * @returns Altitude, ft.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * feetFromMetres(metres(1000)); // 3281
 */
export function feetFromMetres(height: Metres): Feet {
  requireInRange(metres.quantity, height, metres.range);
  return feet(height / METRES_PER_FOOT);
}
