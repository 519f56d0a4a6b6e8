import { requireInRange } from "../errors";
import { kilogramsPerLitre, type Celsius, type KilogramsPerLitre } from "../units";

export const WATER_DENSITY_RANGE = { unit: "°C", min: 0, max: 100 } as const;

/**
 * Gives the density of pure, air-free water at one standard atmosphere.
 *
 * Chosen over the newer equation of Tanaka 2001, which is the better one to 40 °C and wrong above: a kettle boils.
 *
 * @param celsius - Temperature, °C.
 * @returns Density, kg/L, within 0.00002 of IAPWS-95.
 * @validRange 0 to 100 °C.
 * @throws {@link OutOfRangeError} when `celsius` is outside the valid range.
 * @source Kell 1975, J. Chem. Eng. Data 20:97, equation 16 (docs/sources.md#kell-1975)
 * @example
 * waterDensity(celsius(20)); // 0.998204
 */
export function waterDensity(celsius: Celsius): KilogramsPerLitre {
  const t = requireInRange("temperature", celsius, WATER_DENSITY_RANGE);
  const kgPerM3 =
    (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))) /
    (1 + 16.87985e-3 * t);
  return kilogramsPerLitre(kgPerM3 / 1000);
}
