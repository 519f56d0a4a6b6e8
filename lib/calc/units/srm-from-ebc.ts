import { requireInRange } from "../errors";
import { ebc, type Ebc, srm, type Srm } from "./quantities";

/**
 * Converts colour from EBC to SRM.
 *
 * @param colour - Colour, EBC.
 * @returns Colour, SRM.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source EBC Analytica 9.6 and ASBC Beer-10A (docs/sources.md#ebc-analytica, docs/sources.md#asbc-beer-10a)
 * @example
 * srmFromEbc(ebc(20)); // 10.16
 */
export function srmFromEbc(colour: Ebc): Srm {
  requireInRange(ebc.quantity, colour, ebc.range);
  return srm((colour * 12.7) / 25);
}
