import { fermentability } from "./fermentability";
import type { MashCurve } from "./mash-curve";
import type { Fraction } from "../units";

export type AttenuationShift =
  | {
      readonly ok: true;
      /** Limit of apparent attenuation over that of the reference mash; negative for a hotter one. */
      readonly shift: number;
      /** Standard deviation of it. */
      readonly sd: number;
      /** Share of the starch that was converted. */
      readonly converted: Fraction;
    }
  | {
      readonly ok: false;
      readonly reason: "starch-not-converted";
      /** Share of the starch that was converted. */
      readonly converted: Fraction;
    };

/** The mash behind the attenuation that yeast is sold with: an hour at 66 °C. Common practice, no source. */
export const REFERENCE_MASH: MashCurve = [
  [0, 66],
  [60, 66],
];

const REFERENCE_LIMIT = fermentability({ curve: REFERENCE_MASH }).apparentLimit;

/** Less than this is no wort but starch in water. Common practice, no source. */
const LEAST_CONVERTED = 0.5;

/** How far malts scatter around the model at one temperature, and by what share its slope may be wrong. Judgement, no source. */
const SCATTER = 0.01;
const SLOPE_SHARE = 0.25;

/**
 * Finds by how much a mash moves the attenuation of the beer against an ordinary one.
 *
 * Yeast is described by its attenuation in wort of an ordinary mash; adding this difference to it carries the mash
 * into the prediction without claiming to know the malt. Nothing is added for the reference itself.
 *
 * @param a.curve - Minutes and °C of the mash, by rising minute, with straight lines between.
 * @returns Difference of apparent attenuation, a fraction, and its standard deviation; or that too little starch was
 *   converted to speak of a wort.
 * @validRange Rests of 55 to 78 °C. 0 to 102 °C are followed, up to 48 h.
 * @throws {@link OutOfRangeError} when the curve is empty, runs back in time or leaves the range.
 * @source Kinetics of `fermentability` (docs/sources.md#brandam-2003); reference and spread: docs/sources.md#trade-practice
 * @example
 * attenuationShift({ curve: [[0, 70], [60, 70]] }); // { ok: true, shift: -0.09, sd: 0.03, converted: 0.99 }
 */
export function attenuationShift({ curve }: { readonly curve: MashCurve }): AttenuationShift {
  const { apparentLimit, converted } = fermentability({ curve });
  if (converted < LEAST_CONVERTED) return { ok: false, reason: "starch-not-converted", converted };
  const shift = apparentLimit - REFERENCE_LIMIT;
  return { ok: true, shift, sd: Math.hypot(SCATTER, SLOPE_SHARE * shift), converted };
}
