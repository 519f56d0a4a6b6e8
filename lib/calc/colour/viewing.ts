import { requireInRange } from "../errors";
import type { Srm } from "../units";
import { averageAbsorbance } from "./average-absorbance";
import { BEER_COLOUR_RANGE } from "./beer-transmission";
import { DAYLIGHT_D65, FIRST_NM, OBSERVER_X, OBSERVER_Y, OBSERVER_Z, STEP_NM } from "./tables/cie-1931";
import { ILLUMINANT_C, OBSERVER_10_X, OBSERVER_10_Y, OBSERVER_10_Z } from "./tables/cie-1964";

/** Light and observer: daylight and the small field of screens, or what beer laboratories agreed on. */
export type Viewing = "D65/2°" | "C/10°";

/** A colour by how the three receptors see it, white having y = 1. */
export interface Tristimulus {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** One wavelength: what the eye takes of the light there, and what beer of 1 SRM takes in 1 cm. */
interface Band extends Tristimulus {
  readonly absorbance: number;
}

const VIEWINGS: Readonly<Record<Viewing, readonly Band[]>> = {
  "D65/2°": bands(DAYLIGHT_D65, OBSERVER_X, OBSERVER_Y, OBSERVER_Z),
  "C/10°": bands(ILLUMINANT_C, OBSERVER_10_X, OBSERVER_10_Y, OBSERVER_10_Z),
};

/**
 * Sums the spectrum of light that has passed the average beer over what the eye makes of it.
 *
 * @returns Tristimulus values; those of white where there is no beer.
 * @throws {@link OutOfRangeError} when colour or path is outside the range of `beerTransmission`.
 */
export function beerTristimulus(a: {
  readonly srm: Srm;
  readonly pathCm: number;
  readonly viewing: Viewing;
}): Tristimulus {
  requireInRange("colour", a.srm, BEER_COLOUR_RANGE.srm);
  requireInRange("path", a.pathCm, BEER_COLOUR_RANGE.cm);
  const depth = a.srm * a.pathCm;
  let x = 0;
  let y = 0;
  let z = 0;
  for (const band of VIEWINGS[a.viewing]) {
    const transmission = 10 ** (-depth * band.absorbance);
    x += transmission * band.x;
    y += transmission * band.y;
    z += transmission * band.z;
  }
  return { x, y, z };
}

function bands(
  light: readonly number[],
  observerX: readonly number[],
  observerY: readonly number[],
  observerZ: readonly number[],
): readonly Band[] {
  const at = (column: readonly number[], row: number): number => column[row] ?? 0;
  const whiteY = light.reduce((sum, power, row) => sum + power * at(observerY, row), 0);
  return light.map((power, row) => ({
    x: (power * at(observerX, row)) / whiteY,
    y: (power * at(observerY, row)) / whiteY,
    z: (power * at(observerZ, row)) / whiteY,
    absorbance: averageAbsorbance(FIRST_NM + STEP_NM * row),
  }));
}
