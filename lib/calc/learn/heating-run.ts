import { requireInRange } from "../errors";
import { EVAPORATION_RANGE } from "../heat";
import {
  kilograms,
  squareMetres,
  fraction,
  type Celsius,
  type Fraction,
  type Kilograms,
  type SquareMetres,
} from "../units";
import { READING_SD_RANGE, requireStated, TRIAL_RANGE, type Stated } from "./estimate";

/** One reading of a thermometer. */
export interface TimedTemperature {
  /** Since the start of the run, by the clock. */
  readonly seconds: number;
  readonly celsius: Celsius;
  /** Standard uncertainty, K. */
  readonly sd: number;
}

/** Plain water in the kettle, with the heater on or off, and what the thermometer said. */
export interface HeatingRun {
  readonly kind: "heating" | "cooling";
  readonly water: Stated<Kilograms>;
  /** Water surface that is open to the air; 0 under a lid. */
  readonly openAreaM2: SquareMetres;
  readonly ambientC: Celsius;
  readonly relativeHumidity: Fraction;
  /** By rising time. */
  readonly readings: readonly TimedTemperature[];
}

export const WATER_RANGE = { ...kilograms.range, min: 0.1 } as const;

/**
 * Refuses runs that hold anything but numbers in their ranges.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireRun(run: HeatingRun): void {
  requireStated("water", run.water, WATER_RANGE);
  requireInRange("open area", run.openAreaM2, squareMetres.range);
  requireInRange("air temperature", run.ambientC, EVAPORATION_RANGE.ambient);
  requireInRange("relative humidity", run.relativeHumidity, fraction.range);
  requireReadings(run.readings);
}

/**
 * Refuses readings of a thermometer that are out of their ranges or out of order.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireReadings(readings: readonly TimedTemperature[]): void {
  requireInRange("number of readings", readings.length, TRIAL_RANGE.readings);
  let before: number = TRIAL_RANGE.seconds.min;
  for (const reading of readings) {
    requireInRange("time of a reading", reading.seconds, { ...TRIAL_RANGE.seconds, min: before });
    requireInRange("temperature", reading.celsius, EVAPORATION_RANGE.celsius);
    requireInRange("uncertainty of a temperature", reading.sd, READING_SD_RANGE.celsius);
    before = reading.seconds;
  }
}
