import { requireInRange } from "../errors";
import { srm, type Srm, ebc, type Ebc } from "./quantities";

/**
 * Converts colour from SRM to EBC.
 *
 * Both are the absorbance at 430 nm in 1 cm times a number: 25 for EBC, 12.7 for SRM. The rounded 1.97 of the trade
 * differs by less than a thousandth.
 *
 * @param colour - Colour, SRM.
 * @returns Colour, EBC.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source EBC Analytica 9.6 and ASBC Beer-10A (docs/sources.md#ebc-analytica, docs/sources.md#asbc-beer-10a)
 * @example
 * ebcFromSrm(srm(10)); // 19.685
 */
export function ebcFromSrm(colour: Srm): Ebc {
  requireInRange(srm.quantity, colour, srm.range);
  return ebc((colour * 25) / 12.7);
}
