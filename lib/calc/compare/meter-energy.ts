import { requireInRange } from "../errors";
import { kilowattHours } from "../units";

export const METER_READINGS_RANGE = { unit: "", min: 0, max: 1000 } as const;

/** One reading of an electricity meter, kWh. */
export interface MeterReading {
  readonly value: number;
  /** Standard uncertainty of reading it. */
  readonly sd: number;
}

export type MeterEnergy =
  | { readonly ok: true; readonly kWh: number; readonly sd: number }
  /** Fewer than two readings tell nothing; a meter that runs back was set to zero, changed, or misread. */
  | { readonly ok: false; readonly reason: "fewer-than-two" | "runs-back" };

/** Farther back than this many standard uncertainties no reading slips by itself. */
const SLIP = 3;

/**
 * Takes the electricity of a brew day from a meter that was read at its start and at its end.
 *
 * The last reading less the first; those between only say whether the meter ran on. What else hangs on the same meter is in it.
 *
 * @param readings - In order of time, kWh as the meter stands.
 * @returns Energy, kWh, with its standard uncertainty; or why the readings give none.
 * @validRange Up to 1000 readings from 0 to 1 000 000 kWh.
 * @throws {@link OutOfRangeError} when a reading or its uncertainty is outside, or there are too many.
 * @source JCGM 100:2008 for the uncertainty of a difference (docs/sources.md#jcgm-100-2008)
 * @example
 * meterEnergy([{ value: 8041.2, sd: 0.05 }, { value: 8048.7, sd: 0.05 }]); // { ok: true, kWh: 7.5, sd: 0.0707 }
 */
export function meterEnergy(readings: readonly MeterReading[]): MeterEnergy {
  requireInRange("number of meter readings", readings.length, METER_READINGS_RANGE);
  for (const { value, sd } of readings) {
    requireInRange("meter reading", value, kilowattHours.range);
    requireInRange("meter reading, uncertainty", sd, kilowattHours.range);
  }
  const [first] = readings;
  const last = readings.at(-1);
  if (first === undefined || last === undefined || readings.length < 2) return { ok: false, reason: "fewer-than-two" };
  const runsBack = readings.some((reading, i) => {
    const before = readings[i - 1];
    return before !== undefined && before.value - reading.value > SLIP * Math.hypot(before.sd, reading.sd);
  });
  if (runsBack) return { ok: false, reason: "runs-back" };
  return { ok: true, kWh: Math.max(0, last.value - first.value), sd: Math.hypot(first.sd, last.sd) };
}
