import { requireInRange } from "../errors";
import { joulesPerKilogramKelvin, type Celsius, type DegreesPlato, type JoulesPerKilogramKelvin } from "../units";

export const WORT_HEAT_RANGE = {
  plato: { unit: "°P", min: 0, max: 35 },
  celsius: { unit: "°C", min: 0, max: 102 },
} as const;

/** Specific heat of water in this formula, J/(kg·K): the international steam-table calorie. */
export const WATER_HEAT_CAPACITY = 4186.8;

/**
 * Gives the specific heat of wort, taken as a pure sugar solution.
 *
 * @returns Specific heat, J/(kg·K), within about 1 %: water itself is held constant, where it really varies by 0.8 %.
 * @validRange 0 to 35 °P, 0 to 102 °C.
 * @throws {@link OutOfRangeError} when strength or temperature is outside the valid range.
 * @source Bubník et al. 1995, Sugar Technologists Manual, from memory (docs/sources.md#bubnik-1995)
 * @example
 * wortHeatCapacity({ plato: degreesPlato(12), celsius: celsius(20) }); // 3904
 */
export function wortHeatCapacity({
  plato,
  celsius,
}: {
  readonly plato: DegreesPlato;
  readonly celsius: Celsius;
}): JoulesPerKilogramKelvin {
  requireInRange("extract", plato, WORT_HEAT_RANGE.plato);
  requireInRange("temperature", celsius, WORT_HEAT_RANGE.celsius);
  return joulesPerKilogramKelvin(heatCapacityAtZero(plato) + heatCapacitySlope(plato) * celsius);
}

/**
 * Specific heat of wort at 0 °C, without a range check; purity is 100 % because wort is all "sugar" here.
 *
 * @returns Specific heat, J/(kg·K).
 */
export const heatCapacityAtZero = (plato: number): number =>
  WATER_HEAT_CAPACITY - 1000 * plato * (0.0297 - 4.6e-5 * 100);

/**
 * Rise of the specific heat with temperature, without a range check.
 *
 * @returns Slope, J/(kg·K²).
 */
export const heatCapacitySlope = (plato: number): number => 1000 * 7.5e-5 * plato;
