import { requireInRange } from "../errors";
import { celsius, type Celsius } from "./quantities";
import { fahrenheit, type Fahrenheit } from "./us-quantities";

/**
 * Converts a temperature to degrees Fahrenheit.
 *
 * @param temperature - Temperature, °C.
 * @returns Temperature, °F.
 * @validRange The ranges of both units.
 * @throws {@link OutOfRangeError} when either side is outside the range of its unit.
 * @source Exact definition, NIST SP 811 (docs/sources.md#nist-sp-811)
 * @example
 * fahrenheitFromCelsius(celsius(20)); // 68
 */
export function fahrenheitFromCelsius(temperature: Celsius): Fahrenheit {
  requireInRange(celsius.quantity, temperature, celsius.range);
  return fahrenheit(temperature * 1.8 + 32);
}
