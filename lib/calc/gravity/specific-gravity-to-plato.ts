import { requireInRange } from "../errors";
import { degreesPlato, type DegreesPlato, type SpecificGravity } from "../units";
import { APPARENT_WATER_20 } from "./plato-to-specific-gravity";
import { densityRise, densityRiseSlope } from "./sucrose-density";

export const SPECIFIC_GRAVITY_RANGE = { unit: "SG", min: 0.9661, max: 1.1535 } as const;

/**
 * Converts specific gravity, 20 °C over water at 20 °C, to extract by mass: the inverse of `platoToSpecificGravity`.
 *
 * Newton's method from the inverse of Lincoln's fit, which is within 0.05 °P; the curve is so nearly straight that
 * three steps reach the last digit, so their number is fixed.
 *
 * @param sg - Apparent specific gravity 20/20.
 * @returns Extract, °P, within 0.005 of the tables; a round trip closes to 1e-12.
 * @validRange 0.9661 to 1.1535, −9 to 35 °P; below 1 it is the apparent extract of beer lighter than water.
 * @throws {@link OutOfRangeError} when `sg` is outside the valid range.
 * @source NBS Circular C440 1942, table 113 (docs/sources.md#nbs-440-1942), first guess Lincoln 1987
 * (docs/sources.md#lincoln-1987)
 * @example
 * specificGravityToPlato(specificGravity(1.05)); // 12.39
 */
export function specificGravityToPlato(sg: SpecificGravity): DegreesPlato {
  const excess = requireInRange("specific gravity", sg, SPECIFIC_GRAVITY_RANGE) - 1;
  const rise = excess * APPARENT_WATER_20;
  let plato = (258.6 * excess) / (1 + (227.1 / 258.2) * excess);
  for (let step = 0; step < 3; step += 1) plato -= (densityRise(plato) - rise) / densityRiseSlope(plato);
  return degreesPlato(plato);
}
