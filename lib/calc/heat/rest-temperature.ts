import { requireInRange } from "../errors";
import {
  celsius,
  joulesPerKelvin,
  minutes as minutesOf,
  wattsPerKelvin,
  type Celsius,
  type JoulesPerKelvin,
  type Minutes,
  type WattsPerKelvin,
} from "../units";

export const RESTING_HEAT_CAPACITY_RANGE = { ...joulesPerKelvin.range, min: 1 } as const;

/**
 * Finds how far a resting vessel drifts towards the temperature of the air (Newton's law of cooling).
 *
 * @returns Temperature after the rest, °C.
 * @validRange Heat capacity from 1 J/K.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Newton's law of cooling (docs/sources.md#energy-balance)
 * @example
 * restTemperature({ ...mash, fromC: celsius(67), ambientC: celsius(20), minutes: minutes(60) }); // 62.5 with 10 h time constant
 */
export function restTemperature({
  fromC,
  ambientC,
  heatCapacity,
  lossCoefficient,
  minutes,
}: {
  readonly fromC: Celsius;
  readonly ambientC: Celsius;
  readonly heatCapacity: JoulesPerKelvin;
  readonly lossCoefficient: WattsPerKelvin;
  readonly minutes: Minutes;
}): Celsius {
  requireInRange("start temperature", fromC, celsius.range);
  requireInRange("air temperature", ambientC, celsius.range);
  requireInRange("heat capacity", heatCapacity, RESTING_HEAT_CAPACITY_RANGE);
  requireInRange("heat loss", lossCoefficient, wattsPerKelvin.range);
  requireInRange("time", minutes, minutesOf.range);
  return celsius(ambientC + (fromC - ambientC) * Math.exp((-60 * minutes * lossCoefficient) / heatCapacity));
}
