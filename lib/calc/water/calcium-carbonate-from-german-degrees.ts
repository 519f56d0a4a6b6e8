import { requireInRange } from "../errors";
import { milligramsPerLitre, type GermanDegrees, type MilligramsPerLitre } from "../units";
import { CALCIUM_CARBONATE_PER_DEGREE } from "./calcium-carbonate-per-degree";

export const GERMAN_DEGREES_RANGE = { unit: "°dH", min: 0, max: 560 } as const;

/**
 * Expresses German degrees of hardness or alkalinity as calcium carbonate.
 *
 * @param degrees - Hardness or alkalinity, °dH.
 * @returns The same, mg/L as CaCO3.
 * @validRange 0 to 560 °dH.
 * @throws {@link OutOfRangeError} when the value is outside the valid range.
 * @source IUPAC 2021, abridged standard atomic weights (docs/sources.md#iupac-2021)
 * @example
 * calciumCarbonateFromGermanDegrees(germanDegrees(10)); // 178.48
 */
export function calciumCarbonateFromGermanDegrees(degrees: GermanDegrees): MilligramsPerLitre {
  requireInRange("hardness", degrees, GERMAN_DEGREES_RANGE);
  return milligramsPerLitre(degrees * CALCIUM_CARBONATE_PER_DEGREE);
}
