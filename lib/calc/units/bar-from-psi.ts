import { requireInRange } from "../errors";
import { KILOPASCALS_PER_PSI } from "./definitions";
import { bar, type Bar } from "./quantities";
import { psi, type Psi } from "./us-quantities";

/**
 * Converts pounds on the square inch to bar, both gauge.
 *
 * @param pressure - Gauge pressure, psi.
 * @returns Gauge pressure, bar.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * barFromPsi(psi(12)); // 0.827
 */
export function barFromPsi(pressure: Psi): Bar {
  requireInRange(psi.quantity, pressure, psi.range);
  return bar((pressure * KILOPASCALS_PER_PSI) / 100);
}
