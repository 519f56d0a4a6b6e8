import { requireInRange } from "../errors";
import type { Fraction, Grams, Ibu, Litres, Minutes, SpecificGravity } from "../units";
import { alphaConcentration } from "./alpha-concentration";
import { ragerUtilisation } from "./rager-utilisation";
import { TINSETH_RANGE } from "./tinseth-utilisation";

/**
 * Gives the bitterness of one hop addition to the boil (Rager), for comparison with recipes that were written with it.
 *
 * @param a - Alpha acids as a fraction of the hops, hops in g, finished wort in L, mean gravity during the boil and
 *   minutes in it.
 * @returns Bitterness, IBU.
 * @validRange SG 1.000 to 1.160 and 0 to 240 min, as for Tinseth's equation; up to 1000 IBU.
 * @throws {@link OutOfRangeError} when an argument or the bitterness is outside its range.
 * @source Rager 1990, Zymurgy 13(4), as the usual fit of its step table (docs/sources.md#rager-1990)
 * @example
 * ragerIbu({ alphaFraction: fraction(0.06), grams: grams(30), litres: litres(20), sg: specificGravity(1.06), minutes: minutes(60) }); // 26.4
 */
export function ragerIbu(a: {
  readonly alphaFraction: Fraction;
  readonly grams: Grams;
  readonly litres: Litres;
  readonly sg: SpecificGravity;
  readonly minutes: Minutes;
}): Ibu {
  requireInRange("gravity", a.sg, TINSETH_RANGE.sg);
  const gravityAdjustment = a.sg > 1.05 ? (a.sg - 1.05) / 0.2 : 0;
  return alphaConcentration(a, ragerUtilisation(a.minutes) / 100 / (1 + gravityAdjustment));
}
