import { requireInRange } from "../errors";
import { perMinute, type Celsius, type PerMinute } from "../units";

export const ISOMERISATION_RANGE = { unit: "°C", min: 50, max: 130 } as const;

/** Arrhenius terms of isomerisation and of the loss that follows, K. */
export const ISOMERISATION_KELVIN = 11858;
const DEGRADATION_KELVIN = 12994;

export const ZERO_CELSIUS_K = 273.15;

/**
 * Gives the rates at which alpha acids turn into iso-alpha acids, and these into what is not bitter.
 *
 * Both are first order. Gravity, calcium and pH between 4.8 and 6.0 did not change them.
 *
 * @param celsius - Temperature, °C.
 * @returns Rates per minute: `k1` of isomerisation, `k2` of degradation.
 * @validRange 50 to 130 °C. Studied in buffer of pH 5.2 at 90 to 130 °C; below that it is Arrhenius extrapolation.
 * @throws {@link OutOfRangeError} when `celsius` is outside the valid range.
 * @source Malowicki and Shellhammer 2005, J. Agric. Food Chem. 53:4434 (docs/sources.md#malowicki-shellhammer-2005)
 * @example
 * isomerisationRates(celsius(100)); // { k1: 0.0125, k2: 0.00309 }
 */
export function isomerisationRates(celsius: Celsius): { readonly k1: PerMinute; readonly k2: PerMinute } {
  requireInRange("temperature", celsius, ISOMERISATION_RANGE);
  return { k1: perMinute(isomerisationRate(celsius)), k2: perMinute(degradationRate(celsius)) };
}

/**
 * Rate of isomerisation at any temperature, without a range check.
 *
 * @returns k1, per minute.
 */
export const isomerisationRate = (celsius: number): number =>
  7.9e11 * Math.exp(-ISOMERISATION_KELVIN / (celsius + ZERO_CELSIUS_K));

/**
 * Rate of degradation at any temperature, without a range check.
 *
 * @returns k2, per minute.
 */
export const degradationRate = (celsius: number): number =>
  4.1e12 * Math.exp(-DEGRADATION_KELVIN / (celsius + ZERO_CELSIUS_K));
