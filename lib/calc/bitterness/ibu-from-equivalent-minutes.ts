import type { Fraction, Grams, Ibu, Litres, Minutes, SpecificGravity } from "../units";
import { tinsethIbu } from "./tinseth-ibu";

/**
 * Gives the bitterness of hops that saw any temperature curve: Tinseth's equation over the equivalent minutes.
 *
 * A boil on a mountain, a stand and the way down to pitching all count by what they isomerise.
 *
 * @param a - As for `tinsethIbu`, with the time from `equivalentBoilMinutes`.
 * @returns Bitterness, IBU.
 * @validRange As `tinsethUtilisation`; up to 1000 IBU.
 * @throws {@link OutOfRangeError} when an argument or the bitterness is outside its range.
 * @source Tinseth 1997 (docs/sources.md#tinseth-1997); Malowicki and Shellhammer 2005 (docs/sources.md#malowicki-shellhammer-2005)
 * @example
 * ibuFromEquivalentMinutes({ ...addition, equivalentMinutes: equivalentBoilMinutes({ curve }) });
 */
export function ibuFromEquivalentMinutes({
  equivalentMinutes,
  ...addition
}: {
  readonly alphaFraction: Fraction;
  readonly grams: Grams;
  readonly litres: Litres;
  readonly sg: SpecificGravity;
  readonly equivalentMinutes: Minutes;
}): Ibu {
  return tinsethIbu({ ...addition, minutes: equivalentMinutes });
}
