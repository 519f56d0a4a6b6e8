import { celsius, fraction, type Celsius, type Fraction } from "@/lib/calc/units";

/** A class of yeast with its usual apparent attenuation and temperature; a strain's own sheet replaces them. */
export interface YeastClass {
  readonly name: string;
  readonly attenuationLow: Fraction;
  readonly attenuationHigh: Fraction;
  readonly celsiusLow: Celsius;
  readonly celsiusHigh: Celsius;
}

type Row = readonly [name: string, attenuationLow: number, attenuationHigh: number, low: number, high: number];

// Common practice, no source.
const ROWS: readonly Row[] = [
  ["American ale, clean", 0.73, 0.8, 16, 22],
  ["English ale, high flocculation", 0.65, 0.74, 17, 21],
  ["English ale, dry", 0.72, 0.8, 18, 22],
  ["London ale, fruity, hazy", 0.68, 0.78, 18, 22],
  ["Irish ale", 0.69, 0.75, 17, 22],
  ["Scottish ale", 0.69, 0.76, 13, 20],
  ["Kölsch and German ale", 0.72, 0.8, 13, 20],
  ["Altbier", 0.72, 0.78, 13, 20],
  ["Bavarian wheat, phenolic", 0.72, 0.8, 17, 24],
  ["American wheat, neutral", 0.7, 0.76, 16, 22],
  ["Witbier", 0.72, 0.78, 17, 24],
  ["Belgian abbey", 0.74, 0.82, 18, 26],
  ["Belgian strong golden", 0.77, 0.85, 18, 28],
  ["Saison, non-diastatic", 0.74, 0.84, 20, 30],
  ["Saison, diastatic", 0.85, 1, 20, 35],
  ["Nordic farmhouse (kveik)", 0.75, 0.85, 25, 40],
  ["Low attenuation, leaves maltotriose", 0.55, 0.68, 17, 24],
  ["Ale for strong worts", 0.8, 0.98, 18, 30],
  ["California common lager", 0.65, 0.75, 14, 18],
  ["German lager", 0.72, 0.8, 8, 14],
  ["Czech lager", 0.7, 0.77, 8, 14],
  ["American lager", 0.73, 0.79, 8, 14],
  ["Swiss lager, strong", 0.72, 0.8, 9, 15],
  ["Danish lager, dry", 0.73, 0.8, 8, 14],
  ["Brettanomyces, primary or secondary", 0.8, 1, 18, 28],
  ["Wine yeast, bottle conditioning", 0.95, 1, 12, 25],
];

export const YEAST_CLASSES: readonly YeastClass[] = ROWS.map(([name, attenuationLow, attenuationHigh, low, high]) => ({
  name,
  attenuationLow: fraction(attenuationLow),
  attenuationHigh: fraction(attenuationHigh),
  celsiusLow: celsius(low),
  celsiusHigh: celsius(high),
}));
