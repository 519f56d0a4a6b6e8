import type { Srm } from "../units";
import { beerTristimulus } from "./viewing";

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
  const { x, y, z } = beerTristimulus({ srm, pathCm, viewing: "D65/2°" });
  return [
    channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
    channel(-0.969266 * x + 1.8760108 * y + 0.041556 * z),
    channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z),
  ];
}

// The transfer curve of sRGB, clipped, as an 8-bit number.
function channel(linear: number): number {
  const encoded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  return Math.round(255 * Math.min(1, Math.max(0, encoded)));
}
