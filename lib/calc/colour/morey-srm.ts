import { requireInRange } from "../errors";
import { srm, type Srm } from "../units";

export const MOREY_RANGE = { unit: "°L·lb/US gal", min: 0, max: 1000 } as const;

/** Colour up to which the relation was drawn, SRM; darker beer is black to the eye whatever the number says. */
export const MOREY_FITTED_TO = srm(50);

/**
 * Estimates the colour of beer from its malt colour units (Morey).
 *
 * The relation of record: of the three it alone goes to zero with the grist and flattens with dark malt. What boil and
 * yeast change is inside its scatter.
 *
 * @param mcu - Malt colour units, °L·lb/US gal.
 * @returns Colour, SRM, within about 20 % up to 50 SRM; above that an extrapolation, only good for "black".
 * @validRange 0 to 1000 malt colour units; drawn up to 167, which is 50 SRM.
 * @throws {@link OutOfRangeError} when `mcu` is outside the valid range.
 * @source Morey 1995 (docs/sources.md#morey-1995); the scatter is common practice (docs/sources.md#trade-practice)
 * @example
 * moreySrm(20); // 11.65
 */
export function moreySrm(mcu: number): Srm {
  return srm(1.4922 * requireInRange("malt colour units", mcu, MOREY_RANGE) ** 0.6859);
}
