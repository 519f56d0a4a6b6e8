import { requireInRange } from "../errors";
import type { Lab } from "./beer-lab";

export const LAB_RANGE = {
  lightness: { unit: "", min: 0, max: 100 },
  chroma: { unit: "", min: -200, max: 200 },
} as const;

/** Chroma, to the seventh power, at which blue and red are told apart half as well. */
const HALF = 25 ** 7;
const DEGREE = Math.PI / 180;

/**
 * Tells how different two colours look (CIEDE2000, all weights 1).
 *
 * @param a.one - A colour, of `beerLab`.
 * @param a.other - Another one, seen the same way.
 * @returns Difference: about 1 is the least that is seen side by side, and more than 5 is another colour to anybody.
 * @validRange Lightness 0 to 100, a and b −200 to 200.
 * @throws {@link OutOfRangeError} when a value is outside the valid range.
 * @source Sharma, Wu and Dalal 2005, Color Res. Appl. 30:21 (docs/sources.md#sharma-2005)
 * @example
 * colourDifference({ one: { lightness: 50, a: 2.5, b: 0 }, other: { lightness: 50, a: 0, b: -2.5 } }); // 4.3065
 */
export function colourDifference({ one, other }: { readonly one: Lab; readonly other: Lab }): number {
  requireLab(one);
  requireLab(other);
  const c7 = ((Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2) ** 7;
  const stretch = 1.5 - 0.5 * Math.sqrt(c7 / (c7 + HALF));
  const first = polar(one, stretch);
  const second = polar(other, stretch);
  const grey = first.chroma * second.chroma === 0;

  const lightness = other.lightness - one.lightness;
  const chroma = second.chroma - first.chroma;
  const turned = grey ? 0 : turn(second.hue - first.hue);
  const hue = 2 * Math.sqrt(first.chroma * second.chroma) * Math.sin((turned / 2) * DEGREE);

  const meanLightness = (one.lightness + other.lightness) / 2;
  const meanChroma = (first.chroma + second.chroma) / 2;
  // Where one of them is grey, its hue is 0 and the sum is the other's; otherwise the middle of the shorter arc.
  const meanHue = grey ? first.hue + second.hue : first.hue + (second.hue - first.hue) / 2 + beyondHalf(first, second);
  return weighted({ lightness, chroma, hue, meanLightness, meanChroma, meanHue });
}

interface Polar {
  readonly chroma: number;
  readonly hue: number;
}

function requireLab({ lightness, a, b }: Lab): void {
  requireInRange("lightness", lightness, LAB_RANGE.lightness);
  requireInRange("a of the colour", a, LAB_RANGE.chroma);
  requireInRange("b of the colour", b, LAB_RANGE.chroma);
}

function polar({ a, b }: Lab, stretch: number): Polar {
  const stretched = a * stretch;
  const degrees = Math.atan2(b, stretched) / DEGREE;
  return { chroma: Math.hypot(stretched, b), hue: degrees < 0 ? degrees + 360 : degrees };
}

// A difference of hues as a turn of at most half a circle.
function turn(degrees: number): number {
  if (degrees > 180) return degrees - 360;
  return degrees < -180 ? degrees + 360 : degrees;
}

// The plain mean of two hues lies opposite the shorter arc when they are more than half a circle apart.
function beyondHalf(first: Polar, second: Polar): number {
  if (Math.abs(first.hue - second.hue) <= 180) return 0;
  return first.hue + second.hue < 360 ? 180 : -180;
}

function weighted(d: {
  readonly lightness: number;
  readonly chroma: number;
  readonly hue: number;
  readonly meanLightness: number;
  readonly meanChroma: number;
  readonly meanHue: number;
}): number {
  const cos = (degrees: number): number => Math.cos(degrees * DEGREE);
  const t =
    1 -
    0.17 * cos(d.meanHue - 30) +
    0.24 * cos(2 * d.meanHue) +
    0.32 * cos(3 * d.meanHue + 6) -
    0.2 * cos(4 * d.meanHue - 63);
  const fromMiddle = (d.meanLightness - 50) ** 2;
  const lightness = d.lightness / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const chroma = d.chroma / (1 + 0.045 * d.meanChroma);
  const hue = d.hue / (1 + 0.015 * d.meanChroma * t);
  const blue = 30 * Math.exp(-(((d.meanHue - 275) / 25) ** 2));
  const c7 = d.meanChroma ** 7;
  const rotation = -2 * Math.sqrt(c7 / (c7 + HALF)) * Math.sin(2 * blue * DEGREE);
  return Math.sqrt(Math.max(0, lightness ** 2 + chroma ** 2 + hue ** 2 + rotation * chroma * hue));
}
