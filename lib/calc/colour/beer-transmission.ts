import { requireInRange } from "../errors";
import { fraction, type Fraction, type Srm } from "../units";
import { averageAbsorbance } from "./average-absorbance";

export const BEER_COLOUR_RANGE = {
  srm: { unit: "SRM", min: 0, max: 200 },
  cm: { unit: "cm", min: 0, max: 100 },
  nm: { unit: "nm", min: 380, max: 780 },
} as const;

/**
 * Gives the share of light that clear beer lets through at a wavelength.
 *
 * The spectra of barley-malt beers nearly coincide once divided by their colour, so one average curve serves all; beer
 * with fruit or with haze has another. Colour and path count only as their product (Beer and Lambert).
 *
 * @param a.srm - Colour of the beer, SRM.
 * @param a.cm - Path of the light through the glass, cm.
 * @param a.nm - Wavelength, nm.
 * @returns Transmission, 0 to 1.
 * @validRange 0 to 200 SRM, measured on 1 to 60; 0 to 100 cm; 380 to 780 nm.
 * @throws {@link OutOfRangeError} when colour, path or wavelength is outside the valid range.
 * @source deLange 2016, average beer spectrum (docs/sources.md#delange-2016)
 * @example
 * beerTransmission({ srm: srm(12.7), cm: 1, nm: 430 }); // 0.1
 */
export function beerTransmission({
  srm,
  cm,
  nm,
}: {
  readonly srm: Srm;
  readonly cm: number;
  readonly nm: number;
}): Fraction {
  requireInRange("colour", srm, BEER_COLOUR_RANGE.srm);
  requireInRange("path", cm, BEER_COLOUR_RANGE.cm);
  requireInRange("wavelength", nm, BEER_COLOUR_RANGE.nm);
  return fraction(10 ** (srm * -cm * averageAbsorbance(nm)));
}
