import { srm as srmOf, type Srm } from "../units";
import { beerTristimulus, type Viewing } from "./viewing";

/** A colour as the eye tells colours apart. */
export interface Lab {
  /** Lightness, 0 black to 100 white. */
  readonly lightness: number;
  /** Green below, red above 0. */
  readonly a: number;
  /** Blue below, yellow above 0. */
  readonly b: number;
}

/**
 * Finds the colour of beer in CIELAB, the space in which differences are about as large as they look.
 *
 * SRM is the absorbance of one violet wavelength; this is what the eye sees of all of them. White is the same light
 * without beer.
 *
 * @param a.srm - Colour of the beer, SRM.
 * @param a.pathCm - Glass it is seen through, cm.
 * @param a.viewing - "C/10°" is how beer laboratories report, in 1 cm; "D65/2°" is how a screen shows.
 * @returns Lightness, a and b.
 * @validRange 0 to 200 SRM, measured on 1 to 60; 0 to 100 cm.
 * @throws {@link OutOfRangeError} when colour or path is outside the valid range.
 * @source deLange 2016 (docs/sources.md#delange-2016); CIE 1976 (docs/sources.md#cie-lab-1976); CIE 1931
 * (docs/sources.md#cie-1931) and CIE 1964 (docs/sources.md#cie-1964)
 * @example
 * beerLab({ srm: srm(10), pathCm: 1, viewing: "C/10°" }); // { lightness: 84.24, a: 3.40, b: 45.51 }
 */
export function beerLab({
  srm,
  pathCm,
  viewing,
}: {
  readonly srm: Srm;
  readonly pathCm: number;
  readonly viewing: Viewing;
}): Lab {
  const seen = beerTristimulus({ srm, pathCm, viewing });
  const white = beerTristimulus({ srm: srmOf(0), pathCm, viewing });
  const x = response(seen.x / white.x);
  const y = response(seen.y / white.y);
  const z = response(seen.z / white.z);
  return { lightness: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

// The cube root of the eye, with the straight line near black that CIE put under it.
function response(share: number): number {
  return share > 216 / 24389 ? Math.cbrt(share) : (share * (24389 / 27) + 16) / 116;
}
