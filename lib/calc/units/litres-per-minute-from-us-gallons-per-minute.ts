import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON } from "./definitions";
import { litresPerMinute, type LitresPerMinute } from "./quantities";
import { usGallonsPerMinute, type UsGallonsPerMinute } from "./us-quantities";

/**
 * Converts a flow in US gallons to litres.
 *
 * @param flow - Flow, US gal/min.
 * @returns Flow, L/min.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * litresPerMinuteFromUsGallonsPerMinute(usGallonsPerMinute(2)); // 7.571
 */
export function litresPerMinuteFromUsGallonsPerMinute(flow: UsGallonsPerMinute): LitresPerMinute {
  requireInRange(usGallonsPerMinute.quantity, flow, usGallonsPerMinute.range);
  return litresPerMinute(flow * LITRES_PER_US_GALLON);
}
