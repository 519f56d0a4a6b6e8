import { requireInRange } from "../errors";
import { kilogramsPerLitre, percent, type KilogramsPerLitre, type Percent } from "../units";

// Coefficients A1 to A12 of the general formula at 20 °C, in powers of the mass fraction, kg/m³.
const COEFFICIENTS: readonly number[] = [
  998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998,
  -547846.1354, 223446.0334, -39032.85426,
];

/**
 * Gives the density of a mixture of ethanol and water at 20 °C.
 *
 * @param alcoholByWeight - Ethanol, % of the mass.
 * @returns Density in vacuum, kg/L, within 0.00001 of the tables.
 * @validRange 0 to 100 %.
 * @throws {@link OutOfRangeError} when `alcoholByWeight` is outside the valid range.
 * @source OIML R 22 1973, general formula (docs/sources.md#oiml-r22)
 * @example
 * ethanolDensity(percent(5)); // 0.98935
 */
export function ethanolDensity(alcoholByWeight: Percent): KilogramsPerLitre {
  const share = requireInRange("alcohol by weight", alcoholByWeight, percent.range) / 100;
  const kgPerM3 = COEFFICIENTS.reduceRight((sum, coefficient) => sum * share + coefficient, 0);
  return kilogramsPerLitre(kgPerM3 / 1000);
}
