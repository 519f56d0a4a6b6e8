import { requireInRange } from "../errors";
import { LITRES_PER_US_GALLON } from "./definitions";
import { litresPerMinute, type LitresPerMinute } from "./quantities";
import { usGallonsPerMinute, type UsGallonsPerMinute } from "./us-quantities";

/**
 * Converts a flow in litres to US gallons.
 *
 * @param flow - Flow, L/min.
 * @returns Flow, US gal/min.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * usGallonsPerMinuteFromLitresPerMinute(litresPerMinute(10)); // 2.642
 */
export function usGallonsPerMinuteFromLitresPerMinute(flow: LitresPerMinute): UsGallonsPerMinute {
  requireInRange(litresPerMinute.quantity, flow, litresPerMinute.range);
  return usGallonsPerMinute(flow / LITRES_PER_US_GALLON);
}
