import { requireInRange } from "../errors";
import { kilopascals, type Celsius, type Kilopascals } from "../units";
import { antoinePressure } from "./antoine";

export const SATURATION_RANGE = { unit: "°C", min: 0, max: 100 } as const;

/**
 * Gives the vapour pressure over water.
 *
 * @param celsius - Temperature, °C.
 * @returns Pressure, kPa, within 0.5 % of the steam tables.
 * @validRange 0 to 100 °C, the span of the fit.
 * @throws {@link OutOfRangeError} when `celsius` is outside the valid range.
 * @source Antoine equation of water (docs/sources.md#antoine-water)
 * @example
 * saturationPressure(celsius(20)); // 2.33
 */
export function saturationPressure(celsius: Celsius): Kilopascals {
  return kilopascals(antoinePressure(requireInRange("temperature", celsius, SATURATION_RANGE)));
}
