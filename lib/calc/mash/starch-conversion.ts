import { fraction, type Fraction } from "../units";
import { ConvertingMash } from "./converting-mash";
import { requireMashCurve, type MashCurve } from "./mash-curve";

/**
 * Finds the share of the starch that a mash turns into sugar and dextrin.
 *
 * By the kinetics of `fermentability`. What coarse grist, a thick mash or cold corners leave behind is not in it: the
 * conversion of a real kettle is lower, and is learned from its logs.
 *
 * @param a.curve - Minutes and °C of the mash, by rising minute, with straight lines between.
 * @returns Fraction of the starch.
 * @validRange Rests of 55 to 78 °C. 0 to 102 °C are followed, up to 48 h.
 * @throws {@link OutOfRangeError} when the curve is empty, runs back in time or leaves the range.
 * @source Brandam, Meyer, Proth, Strehaiano and Pingaud 2003, Biochem. Eng. J. 13:43 (docs/sources.md#brandam-2003)
 * @example
 * starchConversion({ curve: [[0, 66], [60, 66]] }); // 0.98
 */
export function starchConversion({ curve }: { readonly curve: MashCurve }): Fraction {
  requireMashCurve(curve);
  const mash = new ConvertingMash();
  mash.follow(curve);
  return fraction(mash.converted);
}
