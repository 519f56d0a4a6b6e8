import { requireInRange } from "../errors";
import { lovibond, type Lovibond, srm, type Srm } from "./quantities";

/**
 * Converts the colour of malt from degrees Lovibond to SRM of its laboratory wort.
 *
 * The straight line of the trade runs below zero for anything paler than 0.56 °L, such as white sugar; that is no colour.
 *
 * @param colour - Malt colour, °L.
 * @returns Colour, SRM.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Common practice (docs/sources.md#trade-practice)
 * @example
 * srmFromLovibond(lovibond(60)); // 80.52
 */
export function srmFromLovibond(colour: Lovibond): Srm {
  requireInRange(lovibond.quantity, colour, lovibond.range);
  return srm(Math.max(0, 1.3546 * colour - 0.76));
}
