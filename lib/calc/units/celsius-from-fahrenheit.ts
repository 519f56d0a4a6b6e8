import { requireInRange } from "../errors";
import { celsius, type Celsius } from "./quantities";
import { fahrenheit, type Fahrenheit } from "./us-quantities";

/**
 * Converts a temperature to degrees Celsius.
 *
 * @param temperature - Temperature, °F.
 * @returns Temperature, °C.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * celsiusFromFahrenheit(fahrenheit(212)); // 100
 */
export function celsiusFromFahrenheit(temperature: Fahrenheit): Celsius {
  requireInRange(fahrenheit.quantity, temperature, fahrenheit.range);
  return celsius((temperature - 32) / 1.8);
}
