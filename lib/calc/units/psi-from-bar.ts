import { requireInRange } from "../errors";
import { KILOPASCALS_PER_PSI } from "./definitions";
import { bar, type Bar } from "./quantities";
import { psi, type Psi } from "./us-quantities";

/**
 * Converts bar to pounds on the square inch, both gauge.
 *
 * @param pressure - Gauge pressure, bar.
 * @returns Gauge pressure, psi.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * psiFromBar(bar(1)); // 14.50
 */
export function psiFromBar(pressure: Bar): Psi {
  requireInRange(bar.quantity, pressure, bar.range);
  return psi((pressure * 100) / KILOPASCALS_PER_PSI);
}
