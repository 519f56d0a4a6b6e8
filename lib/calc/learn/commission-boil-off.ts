import { requireInRange } from "../errors";
import { WATER_DENSITY_RANGE, waterDensity } from "../gravity";
import { LATENT_HEAT_RANGE, latentHeat } from "../heat";
import {
  kilogramsPerHour,
  litres,
  watts,
  type Celsius,
  type KilogramsPerHour,
  type Litres,
  type Watts,
} from "../units";
import { READING_SD_RANGE, TRIAL_RANGE, type Estimate } from "./estimate";
import { fitTrial, type Scatter } from "./fit-trial";

/** What the kettle held at one moment of the boil. */
export interface TimedVolume {
  /** Since the start of the run, by the clock. */
  readonly seconds: number;
  /** As the marks say, at the temperature of the water. */
  readonly litres: Litres;
  readonly celsius: Celsius;
  /** Standard uncertainty, L. */
  readonly sd: number;
}

export interface BoilOffRun {
  /** By rising time; the first when it boils, the last while it still does. */
  readonly readings: readonly TimedVolume[];
}

export type BoilOffTrial =
  | {
      readonly ok: true;
      readonly rate: Estimate<KilogramsPerHour>;
      /** Power that turned water into steam; what the walls lost comes on top. */
      readonly steamPower: Estimate<Watts>;
      readonly scatter: Scatter;
      /** Water left, kg, along the fitted line of each run: [minute, kg] at its first and last reading. */
      readonly lines: readonly (readonly (readonly [minute: number, kilograms: number])[])[];
      readonly residuals: readonly (readonly number[])[];
    }
  | { readonly ok: false; readonly reason: "too-few-readings"; readonly run: number }
  | {
      readonly ok: false;
      readonly reason: "too-short";
      /** How long a boil would tell the rate to a tenth with volumes as uncertain as these; null where it did not fall. */
      readonly minutesNeeded: number | null;
    };

/** A rate has to be known to this share of itself. */
const GOOD_RATE = 0.25;
const AIM = 0.1;

/**
 * Finds what a kettle boils off in an hour, from volumes read while it boils.
 *
 * Volumes become masses by the density at their own temperature, and a straight line runs through them; several boils
 * share its slope. The boil counts from when it boils, at the power that is used for brewing.
 *
 * @returns Rate, kg/h, and the power in the steam, W, with standard errors; or that it boiled for too short a time.
 * @validRange Water of 0 to 100 °C, boiling point 0 to 102 °C.
 * @throws {@link OutOfRangeError} when a number is outside its range or readings are out of order.
 * @source Conservation of mass and energy (docs/sources.md#mass-balance, docs/sources.md#energy-balance); heat of
 *   evaporation: docs/sources.md#nist-steam-tables; densities: docs/sources.md#kell-1975
 * @example
 * commissionBoilOff({ boilingC: celsius(100), runs: [{ readings: [{ seconds: 0, litres: litres(30), celsius: celsius(100), sd: 0.1 }, { seconds: 3600, litres: litres(27), celsius: celsius(100), sd: 0.1 }] }] });
 * // { ok: true, rate: { value: 2.875, standardError: 0.136 }, … }
 */
export function commissionBoilOff(a: {
  readonly runs: readonly BoilOffRun[];
  readonly boilingC: Celsius;
}): BoilOffTrial {
  const { runs } = a;
  requireInRange("number of runs", runs.length, TRIAL_RANGE.runs);
  requireInRange("boiling point", a.boilingC, LATENT_HEAT_RANGE);
  for (const run of runs) requireVolumes(run.readings);
  const short = runs.findIndex(({ readings }) => lengthS(readings) <= 0);
  if (short >= 0) return { ok: false, reason: "too-few-readings", run: short };
  const masses = runs.map(({ readings }) => readings.map(massOf));
  const fit = fitTrial(
    [{ start: 1, scale: 1 }, ...masses.map((run) => ({ start: run[0]?.kg ?? 0, scale: Math.max(1, run[0]?.kg ?? 0) }))],
    ([rate = 0, ...starts]) =>
      masses.flatMap((run, r) =>
        run.map(({ seconds, kg, sd }) => (kg - (starts[r] ?? 0) + (rate * seconds) / 3600) / sd),
      ),
  );
  if (!fit.ok) throw new Error("a straight line through two moments is always told");
  const [rate, ...starts] = fit.estimates;
  if (rate === undefined) throw new Error("the slope of a line is one of its unknowns");
  if (rate.standardError > GOOD_RATE * rate.value)
    return { ok: false, reason: "too-short", minutesNeeded: minutesNeeded(runs, rate) };
  const heat = latentHeat(a.boilingC) / 3600;
  let taken = 0;
  return {
    ok: true,
    rate: { value: kilogramsPerHour(rate.value), standardError: rate.standardError },
    steamPower: { value: watts(rate.value * heat), standardError: rate.standardError * heat },
    scatter: fit.scatter,
    lines: masses.map((run, r) =>
      [run[0]?.seconds ?? 0, run.at(-1)?.seconds ?? 0].map(
        (at) => [at / 60, (starts[r]?.value ?? 0) - (rate.value * at) / 3600] as const,
      ),
    ),
    residuals: masses.map((run) => fit.residuals.slice(taken, (taken += run.length))),
  };
}

function requireVolumes(readings: readonly TimedVolume[]): void {
  requireInRange("number of readings", readings.length, TRIAL_RANGE.readings);
  let before: number = TRIAL_RANGE.seconds.min;
  for (const reading of readings) {
    requireInRange("time of a reading", reading.seconds, { ...TRIAL_RANGE.seconds, min: before });
    requireInRange("volume", reading.litres, litres.range);
    requireInRange("temperature", reading.celsius, WATER_DENSITY_RANGE);
    requireInRange("uncertainty of a volume", reading.sd, READING_SD_RANGE.litres);
    before = reading.seconds;
  }
}

const lengthS = (readings: readonly TimedVolume[]): number =>
  (readings.at(-1)?.seconds ?? 0) - (readings[0]?.seconds ?? 0);

function massOf(reading: TimedVolume): { readonly seconds: number; readonly kg: number; readonly sd: number } {
  const density = waterDensity(reading.celsius);
  return { seconds: reading.seconds, kg: reading.litres * density, sd: reading.sd * density };
}

// The error of a slope goes down with the length of the run.
function minutesNeeded(runs: readonly BoilOffRun[], rate: Estimate): number | null {
  if (rate.value <= 0) return null;
  const minutes = Math.max(...runs.map(({ readings }) => lengthS(readings))) / 60;
  return Math.min(2880, Math.ceil((minutes * rate.standardError) / (AIM * rate.value) / 5) * 5);
}
