import { requireInRange } from "../errors";
import { volumesCo2, type GramsPerLitre, type VolumesCo2 } from "../units";
import { CO2_GRAMS_PER_VOLUME } from "./grams-per-litre-from-volumes";

/** As much as ten volumes. */
export const DISSOLVED_RANGE = { unit: "g/L", min: 0, max: 10 * CO2_GRAMS_PER_VOLUME } as const;

/**
 * Converts grams of carbon dioxide in a litre of beer to volumes: the exact inverse of `gramsPerLitreFromVolumes`.
 *
 * @param gramsPerLitre - CO2 dissolved in the beer, g/L.
 * @returns Litres of gas, as the ideal one at 0 °C and 1 atm, in a litre of beer.
 * @validRange 0 to 19.6 g/L, which is 10 volumes.
 * @throws {@link OutOfRangeError} when `gramsPerLitre` is outside the valid range.
 * @source Molar mass of IUPAC 2021 over the molar volume of the ideal gas (docs/sources.md#iupac-2021)
 * @example
 * volumesFromGramsPerLitre(gramsPerLitre(5)); // 2.55
 */
export function volumesFromGramsPerLitre(gramsPerLitre: GramsPerLitre): VolumesCo2 {
  requireInRange("dissolved carbon dioxide", gramsPerLitre, DISSOLVED_RANGE);
  return volumesCo2(Math.min(volumesCo2.range.max, gramsPerLitre / CO2_GRAMS_PER_VOLUME));
}
