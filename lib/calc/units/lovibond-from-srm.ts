import { requireInRange } from "../errors";
import { srm, type Srm, lovibond, type Lovibond } from "./quantities";

/**
 * Converts the colour of laboratory wort in SRM to degrees Lovibond of the malt.
 *
 * The straight line of the trade gives 0.56 °L to what has no colour.
 *
 * @param colour - Colour, SRM.
 * @returns Malt colour, °L.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Common practice (docs/sources.md#trade-practice)
 * @example
 * lovibondFromSrm(srm(10)); // 7.943
 */
export function lovibondFromSrm(colour: Srm): Lovibond {
  requireInRange(srm.quantity, colour, srm.range);
  return lovibond((colour + 0.76) / 1.3546);
}
