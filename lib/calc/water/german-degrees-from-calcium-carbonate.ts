import { requireInRange } from "../errors";
import { germanDegrees, milligramsPerLitre, type GermanDegrees, type MilligramsPerLitre } from "../units";
import { CALCIUM_CARBONATE_PER_DEGREE } from "./calcium-carbonate-per-degree";

/**
 * Expresses hardness or alkalinity in German degrees.
 *
 * @param milligrams - Hardness or alkalinity, mg/L as CaCO3.
 * @returns The same, °dH, each 10 mg/L of CaO.
 * @validRange 0 to 10 000 mg/L as CaCO3.
 * @throws {@link OutOfRangeError} when the value is outside the valid range.
 * @source IUPAC 2021, abridged standard atomic weights (docs/sources.md#iupac-2021)
 * @example
 * germanDegreesFromCalciumCarbonate(milligramsPerLitre(178.5)); // 10.00
 */
export function germanDegreesFromCalciumCarbonate(milligrams: MilligramsPerLitre): GermanDegrees {
  requireInRange("hardness", milligrams, milligramsPerLitre.range);
  return germanDegrees(milligrams / CALCIUM_CARBONATE_PER_DEGREE);
}
