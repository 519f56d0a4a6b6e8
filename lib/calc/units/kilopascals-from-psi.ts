import { requireInRange } from "../errors";
import { KILOPASCALS_PER_PSI } from "./definitions";
import { kilopascals, type Kilopascals } from "./quantities";
import { psi, type Psi } from "./us-quantities";

/**
 * Converts pounds on the square inch to kilopascals, both absolute.
 *
 * @param pressure - Absolute pressure, psi.
 * @returns Absolute pressure, kPa.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * kilopascalsFromPsi(psi(14.696)); // 101.3
 */
export function kilopascalsFromPsi(pressure: Psi): Kilopascals {
  requireInRange(psi.quantity, pressure, psi.range);
  return kilopascals(pressure * KILOPASCALS_PER_PSI);
}
