import { requireInRange } from "../errors";
import { srm, type Srm } from "../units";

export const DANIELS_RANGE = { unit: "°L·lb/US gal", min: 11, max: 200 } as const;

/**
 * Estimates the colour of beer from its malt colour units by a straight line (Daniels).
 *
 * @param mcu - Malt colour units, °L·lb/US gal.
 * @returns Colour, SRM.
 * @validRange 11 to 200 malt colour units: below, the line says 8 SRM to water.
 * @throws {@link OutOfRangeError} when `mcu` is outside the valid range.
 * @source Daniels 2000, Designing Great Beers, from memory (docs/sources.md#daniels-2000)
 * @example
 * danielsSrm(20); // 12.4
 */
export function danielsSrm(mcu: number): Srm {
  return srm(0.2 * requireInRange("malt colour units", mcu, DANIELS_RANGE) + 8.4);
}
