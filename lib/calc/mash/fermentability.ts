import { requireInRange } from "../errors";
import { fraction, type Celsius, type Fraction, type Minutes } from "../units";
import { ConvertingMash } from "./converting-mash";
import { MASH_CURVE_RANGE, requireMashCurve, type MashCurve } from "./mash-curve";

/** A rest of the mash. */
export interface Rest {
  readonly celsius: Celsius;
  readonly minutes: Minutes;
}

export interface Fermentability {
  /** Share of the dissolved extract that a yeast can ferment to the end (real attenuation). */
  readonly fermentable: Fraction;
  /** The same as a hydrometer shows it: the limit of apparent attenuation. */
  readonly apparentLimit: Fraction;
  /** Share of the starch that has become sugar or dextrin. */
  readonly converted: Fraction;
  /** Shares of the enzymes that are still alive at the end. */
  readonly alphaLeft: Fraction;
  readonly betaLeft: Fraction;
}

/** What a kilogram of pale-malt extract is made of when all starch is converted. From memory, rounded. */
const EXTRACT_SHARES = {
  /** Sugars that the malt brings ready-made. */
  sugar: 0.09,
  /** Protein, gums and minerals. */
  neverFermentable: 0.12,
  starch: 0.79,
} as const;

/** Share of the starch that both amylases can make sugar of; the branches of the rest stay dextrin. From memory. */
const SUGAR_LIMIT = 0.82;

/** Apparent attenuation falls to this part when the alcohol is boiled off, whatever the strength (Balling). */
const REAL_PER_APPARENT = 0.8192;

/**
 * Finds how far a wort can ferment from the temperatures that its mash really went through.
 *
 * Starch opens by gelatinisation, α- and β-amylase hydrolyse it and die, each at its own rate and by Arrhenius' law; the
 * curve is followed step by step in closed form. Deaths and gelatinisation are published kinetics, the pace of
 * hydrolysis is fitted to measured attenuation limits. It is a pale barley malt at 2.5 to 4 L/kg and a usual mash pH:
 * thickness, pH, grind, limit dextrinase and the enzymes of the single malt are left out.
 *
 * @param a.curve - Minutes and °C of the mash, by rising minute, with straight lines between; or
 * @param a.steps - its rests, °C and minutes, each reached at once.
 * @returns Fractions; the apparent limit within about 0.03 of a usual malt's, steps alone within 0.001 of the equations.
 * @validRange Rests of 55 to 78 °C. 0 to 102 °C are followed, up to 48 h.
 * @throws {@link OutOfRangeError} when the curve is empty, runs back in time or leaves the range.
 * @source Brandam, Meyer, Proth, Strehaiano and Pingaud 2003, Biochem. Eng. J. 13:43 (docs/sources.md#brandam-2003)
 * @source Koljonen, Hämäläinen, Sjöholm and Pietilä 1995, J. Food Eng. 26:329 (docs/sources.md#koljonen-1995)
 * @source Muller 1990, J. Inst. Brew. (docs/sources.md#muller-1990); Balling (docs/sources.md#balling-1865)
 * @example
 * fermentability({ curve: [[0, 66], [60, 66]] }); // { fermentable: 0.66, apparentLimit: 0.80, converted: 0.98, … }
 */
export function fermentability(a: { readonly curve: MashCurve } | { readonly steps: readonly Rest[] }): Fermentability {
  const curve = "curve" in a ? a.curve : curveOfRests(a.steps);
  requireMashCurve(curve);
  const mash = new ConvertingMash();
  mash.follow(curve);
  const { sugar, starch, neverFermentable } = EXTRACT_SHARES;
  const fermentable =
    (sugar + starch * SUGAR_LIMIT * mash.sugar) / (sugar + neverFermentable + starch * mash.converted);
  return {
    fermentable: fraction(fermentable),
    apparentLimit: fraction(fermentable / REAL_PER_APPARENT),
    converted: fraction(mash.converted),
    alphaLeft: fraction(mash.alpha),
    betaLeft: fraction(mash.beta),
  };
}

function curveOfRests(rests: readonly Rest[]): MashCurve {
  let minute = 0;
  return rests.flatMap(({ celsius, minutes }) => {
    const from = minute;
    minute += requireInRange("length of the rest", minutes, MASH_CURVE_RANGE.minute);
    return [[from, celsius] as const, [minute, celsius] as const];
  });
}
