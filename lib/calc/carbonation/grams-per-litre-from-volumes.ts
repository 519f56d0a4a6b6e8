import { requireInRange } from "../errors";
import { gramsPerLitre, volumesCo2, type GramsPerLitre, type VolumesCo2 } from "../units";

/**
 * A volume of CO2 in a volume of beer weighs this, g/L: molar mass over 22.414 L/mol, the ideal gas at 0 °C and 1 atm. The real
 * gas is 0.7 % denser, 1.977 g/L; the ideal one is what volumes mean in the tables of the trade.
 */
export const CO2_GRAMS_PER_VOLUME = 44.009 / 22.414;

/**
 * Converts volumes of carbon dioxide to grams in a litre of beer.
 *
 * @param volumes - Litres of gas at 0 °C and 1 atm in a litre of beer.
 * @returns CO2, g/L, as the ideal gas; of the real gas a volume holds 0.7 % more.
 * @validRange 0 to 10 volumes.
 * @throws {@link OutOfRangeError} when `volumes` is outside the valid range.
 * @source Molar mass of IUPAC 2021 over the molar volume of the ideal gas (docs/sources.md#iupac-2021)
 * @example
 * gramsPerLitreFromVolumes(volumesCo2(2.5)); // 4.91
 */
export function gramsPerLitreFromVolumes(volumes: VolumesCo2): GramsPerLitre {
  return gramsPerLitre(requireInRange("carbonation", volumes, volumesCo2.range) * CO2_GRAMS_PER_VOLUME);
}
