import { requireInRange } from "../errors";
import { COOLANT_RANGE, EVAPORATION_RANGE } from "../heat";
import { litresPerMinute } from "../units";
import type { Celsius, JoulesPerKelvin, Kilograms, LitresPerMinute, WattsPerKelvin } from "../units";
import { requireStated, type Stated } from "./estimate";
import { requireReadings, WATER_RANGE, type TimedTemperature } from "./heating-run";

/** Hot water in the kettle that a coil or a bath of melting ice cools, well stirred. */
export interface ChillRun {
  readonly water: Stated<Kilograms>;
  readonly ambientC: Celsius;
  /** Cooling water at the tap; not looked at for an ice bath. */
  readonly coolantC: Stated<Celsius>;
  readonly coolantFlow: Stated<LitresPerMinute>;
  /** By rising time. */
  readonly readings: readonly TimedTemperature[];
}

export interface ChillTrialInput {
  readonly kind: "immersion" | "ice bath";
  readonly runs: readonly ChillRun[];
  readonly vesselHeatCapacity: Stated<JoulesPerKelvin>;
  readonly lossCoefficient: Stated<WattsPerKelvin>;
}

/**
 * Refuses a chill that holds anything but numbers in their ranges.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireChillRun(run: ChillRun): void {
  requireStated("water", run.water, WATER_RANGE);
  requireStated("coolant temperature", run.coolantC, COOLANT_RANGE);
  requireStated("coolant flow", run.coolantFlow, litresPerMinute.range);
  requireInRange("air temperature", run.ambientC, EVAPORATION_RANGE.ambient);
  requireReadings(run.readings);
}
