import { requireInRange } from "../errors";
import { KILOPASCALS_PER_PSI } from "./definitions";
import { kilopascals, type Kilopascals } from "./quantities";
import { psi, type Psi } from "./us-quantities";

/**
 * Converts kilopascals to pounds on the square inch, both absolute.
 *
 * @param pressure - Absolute pressure, kPa.
 * @returns Absolute pressure, psi.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * psiFromKilopascals(kilopascals(101.325)); // 14.70
 */
export function psiFromKilopascals(pressure: Kilopascals): Psi {
  requireInRange(kilopascals.quantity, pressure, kilopascals.range);
  return psi(pressure / KILOPASCALS_PER_PSI);
}
