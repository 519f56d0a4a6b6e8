import { celsius, fraction, type Celsius, type Fraction } from "@/lib/calc/units";

/** A class of yeast with its usual apparent attenuation and temperature; a strain's own sheet replaces them. */
export interface YeastClass {
  readonly name: string;
  readonly attenuationLow: Fraction;
  readonly attenuationHigh: Fraction;
  readonly celsiusLow: Celsius;
  readonly celsiusHigh: Celsius;
  readonly group: YeastGroup;
  readonly flocculation: Flocculation;
  /** Makes clove-like phenols; `diastatic` strains also go on fermenting dextrins in the bottle. */
  readonly trait: YeastTrait | null;
}

export type YeastGroup = "ale" | "lager" | "wild" | "wine";
export type Flocculation = "low" | "low-medium" | "medium" | "medium-high" | "high";
export type YeastTrait = "phenolic" | "phenolic, diastatic";

type Row = readonly [
  name: string,
  attenuationLow: number,
  attenuationHigh: number,
  low: number,
  high: number,
  group: YeastGroup,
  flocculation: Flocculation,
  trait?: YeastTrait,
];

// Common practice, no source.
const ROWS: readonly Row[] = [
  ["American ale, clean", 0.73, 0.8, 16, 22, "ale", "medium"],
  ["English ale, high flocculation", 0.65, 0.74, 17, 21, "ale", "high"],
  ["English ale, dry", 0.72, 0.8, 18, 22, "ale", "medium-high"],
  ["London ale, fruity, hazy", 0.68, 0.78, 18, 22, "ale", "low-medium"],
  ["Irish ale", 0.69, 0.75, 17, 22, "ale", "medium"],
  ["Scottish ale", 0.69, 0.76, 13, 20, "ale", "medium-high"],
  ["Kölsch and German ale", 0.72, 0.8, 13, 20, "ale", "low-medium"],
  ["Altbier", 0.72, 0.78, 13, 20, "ale", "medium"],
  ["Bavarian wheat, phenolic", 0.72, 0.8, 17, 24, "ale", "low", "phenolic"],
  ["American wheat, neutral", 0.7, 0.76, 16, 22, "ale", "low"],
  ["Witbier", 0.72, 0.78, 17, 24, "ale", "low-medium", "phenolic"],
  ["Belgian abbey", 0.74, 0.82, 18, 26, "ale", "medium", "phenolic"],
  ["Belgian strong golden", 0.77, 0.85, 18, 28, "ale", "low-medium", "phenolic"],
  ["Saison, non-diastatic", 0.74, 0.84, 20, 30, "ale", "low-medium", "phenolic"],
  ["Saison, diastatic", 0.85, 1, 20, 35, "ale", "low", "phenolic, diastatic"],
  ["Nordic farmhouse (kveik)", 0.75, 0.85, 25, 40, "ale", "medium-high"],
  ["Low attenuation, leaves maltotriose", 0.55, 0.68, 17, 24, "ale", "low"],
  ["Ale for strong worts", 0.8, 0.98, 18, 30, "ale", "low"],
  ["California common lager", 0.65, 0.75, 14, 18, "lager", "high"],
  ["German lager", 0.72, 0.8, 8, 14, "lager", "medium"],
  ["Czech lager", 0.7, 0.77, 8, 14, "lager", "medium"],
  ["American lager", 0.73, 0.79, 8, 14, "lager", "medium"],
  ["Swiss lager, strong", 0.72, 0.8, 9, 15, "lager", "medium"],
  ["Danish lager, dry", 0.73, 0.8, 8, 14, "lager", "low-medium"],
  ["Brettanomyces, primary or secondary", 0.8, 1, 18, 28, "wild", "low"],
  ["Wine yeast, bottle conditioning", 0.95, 1, 12, 25, "wine", "low"],
];

export const YEAST_CLASSES: readonly YeastClass[] = ROWS.map(
  ([name, attenuationLow, attenuationHigh, low, high, group, flocculation, trait]) => ({
    name,
    attenuationLow: fraction(attenuationLow),
    attenuationHigh: fraction(attenuationHigh),
    celsiusLow: celsius(low),
    celsiusHigh: celsius(high),
    group,
    flocculation,
    trait: trait ?? null,
  }),
);
