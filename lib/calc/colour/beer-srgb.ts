import { requireInRange } from "../errors";
import type { Srm } from "../units";
import { averageAbsorbance } from "./average-absorbance";
import { BEER_COLOUR_RANGE } from "./beer-transmission";
import { DAYLIGHT_D65, FIRST_NM, OBSERVER_X, OBSERVER_Y, OBSERVER_Z, STEP_NM } from "./tables/cie-1931";

/** One wavelength: what the eye takes of daylight there, white having Y = 1, and what beer of 1 SRM takes in 1 cm. */
interface Band {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly absorbance: number;
}

const BANDS: readonly Band[] = bands();

/**
 * Finds the colour of beer on a screen: its spectrum in daylight through the standard observer to sRGB.
 *
 * Beer beyond a pale lager is more saturated than a screen can show; each channel is then clipped on its own, which
 * keeps the lightness of the others.
 *
 * @param a.srm - Colour of the beer, SRM.
 * @param a.pathCm - Glass it is seen through, cm: 5 is a small tumbler. A swatch should say which.
 * @returns Red, green and blue, 0 to 255; white where there is no beer.
 * @validRange 0 to 200 SRM, measured on 1 to 60; 0 to 100 cm.
 * @throws {@link OutOfRangeError} when colour or path is outside the valid range.
 * @source deLange 2016 (docs/sources.md#delange-2016); CIE 1931 2° and D65 (docs/sources.md#cie-1931); sRGB
 * (docs/sources.md#iec-61966-2-1)
 * @example
 * beerSrgb({ srm: srm(5), pathCm: 5 }); // [224, 154, 3]
 */
export function beerSrgb({
  srm,
  pathCm,
}: {
  readonly srm: Srm;
  readonly pathCm: number;
}): readonly [red: number, green: number, blue: number] {
  requireInRange("colour", srm, BEER_COLOUR_RANGE.srm);
  requireInRange("path", pathCm, BEER_COLOUR_RANGE.cm);
  const depth = srm * pathCm;
  let x = 0;
  let y = 0;
  let z = 0;
  for (const band of BANDS) {
    const transmission = 10 ** (-depth * band.absorbance);
    x += transmission * band.x;
    y += transmission * band.y;
    z += transmission * band.z;
  }
  return [
    channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
    channel(-0.969266 * x + 1.8760108 * y + 0.041556 * z),
    channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z),
  ];
}

function bands(): Band[] {
  const at = (column: readonly number[], row: number): number => column[row] ?? 0;
  const whiteY = DAYLIGHT_D65.reduce((sum, power, row) => sum + power * at(OBSERVER_Y, row), 0);
  return DAYLIGHT_D65.map((power, row) => ({
    x: (power * at(OBSERVER_X, row)) / whiteY,
    y: (power * at(OBSERVER_Y, row)) / whiteY,
    z: (power * at(OBSERVER_Z, row)) / whiteY,
    absorbance: averageAbsorbance(FIRST_NM + STEP_NM * row),
  }));
}

// The transfer curve of sRGB, clipped, as an 8-bit number.
function channel(linear: number): number {
  const encoded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  return Math.round(255 * Math.min(1, Math.max(0, encoded)));
}
