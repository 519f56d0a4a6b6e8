import { requireInRange } from "../errors";
import { srm, type Srm } from "../units";

export const MOSHER_RANGE = { unit: "°L·lb/US gal", min: 7, max: 200 } as const;

/**
 * Estimates the colour of beer from its malt colour units by a straight line (Mosher).
 *
 * @param mcu - Malt colour units, °L·lb/US gal.
 * @returns Colour, SRM.
 * @validRange 7 to 200 malt colour units: below, the line says 5 SRM to water.
 * @throws {@link OutOfRangeError} when `mcu` is outside the valid range.
 * @source Mosher 1995, The Brewer's Companion, from memory (docs/sources.md#mosher-1995)
 * @example
 * mosherSrm(20); // 10.7
 */
export function mosherSrm(mcu: number): Srm {
  return srm(0.3 * requireInRange("malt colour units", mcu, MOSHER_RANGE) + 4.7);
}
