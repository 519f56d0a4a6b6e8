import type { Fraction, Grams, Ibu, Litres, Minutes, SpecificGravity } from "../units";
import { alphaConcentration } from "./alpha-concentration";
import { tinsethUtilisation } from "./tinseth-utilisation";

/**
 * Gives the bitterness of one hop addition to the boil (Tinseth).
 *
 * @param a - Alpha acids as a fraction of the hops, hops in g, finished wort in L, mean gravity during the boil and
 *   minutes in it.
 * @returns Bitterness, IBU: mg of iso-alpha acids per litre.
 * @validRange As `tinsethUtilisation`; up to 1000 IBU.
 * @throws {@link OutOfRangeError} when an argument or the bitterness is outside its range.
 * @source Tinseth 1997 (docs/sources.md#tinseth-1997)
 * @example
 * tinsethIbu({ alphaFraction: fraction(0.05), grams: grams(30), litres: litres(20), sg: specificGravity(1.05), minutes: minutes(60) }); // 17.3
 */
export function tinsethIbu(a: {
  readonly alphaFraction: Fraction;
  readonly grams: Grams;
  readonly litres: Litres;
  readonly sg: SpecificGravity;
  readonly minutes: Minutes;
}): Ibu {
  return alphaConcentration(a, tinsethUtilisation(a));
}
