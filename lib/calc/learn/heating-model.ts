import { WATER_HEAT_CAPACITY } from "../heat";
import type { JoulesPerKelvin } from "../units";
import { nearlyExact, type Stated } from "./estimate";
import type { Unknown } from "./fit-trial";
import type { HeatingRun } from "./heating-run";
import { vesselCourse } from "./vessel-course";

/** Places of the unknowns that all runs share; start and water of each run follow. */
export const POWER = 0;
export const LOSS = 1;
export const VESSEL = 2;
const SHARED = 3;
const PER_RUN = 2;

/**
 * Residuals of the readings of several runs on one kettle.
 *
 * Unknown are power, loss and the vessel's heat capacity, and for each run its start and its true amount of water.
 */
export class HeatingModel {
  readonly unknowns: readonly Unknown[];

  constructor(
    readonly runs: readonly HeatingRun[],
    vessel: Stated<JoulesPerKelvin>,
  ) {
    const powerW = startPower(runs, vessel);
    this.unknowns = [
      // Without a heated run nothing pulls at the power; it is then held at nothing.
      powerW === null ? { start: 0, scale: 1, prior: { value: 0, sd: 1 } } : { start: powerW, scale: powerW },
      { start: 5, scale: 10 },
      { start: vessel.value, scale: Math.max(vessel.value, 1), prior: nearlyExact(vessel) },
      ...runs.flatMap(({ readings, water }) => [
        { start: readings[0]?.celsius ?? 20, scale: 10 },
        { start: water.value, scale: water.value, prior: nearlyExact(water) },
      ]),
    ];
  }

  readonly residuals = (x: readonly number[]): number[] =>
    this.runs.flatMap((run, r) => {
      const course = this.course(x, r, this.secondsOf(run));
      return run.readings.map(({ celsius, sd }, i) => (celsius - (course[i] ?? 0)) / sd);
    });

  // °C of a run at times after its first reading.
  course(x: readonly number[], r: number, seconds: readonly number[]): number[] {
    const run = this.runs[r];
    const at = SHARED + PER_RUN * r;
    if (run === undefined) throw new Error(`no run ${r}`);
    return vesselCourse(
      {
        massKg: x[at + 1] ?? 0,
        vesselHeatCapacity: x[VESSEL] ?? 0,
        powerW: run.kind === "heating" ? (x[POWER] ?? 0) : 0,
        lossCoefficient: x[LOSS] ?? 0,
        openAreaM2: run.openAreaM2,
        ambientC: run.ambientC,
        relativeHumidity: run.relativeHumidity,
        startC: x[at] ?? 0,
      },
      seconds,
    );
  }

  secondsOf({ readings }: HeatingRun): number[] {
    return readings.map(({ seconds }) => seconds - (readings[0]?.seconds ?? 0));
  }
}

function startPower(runs: readonly HeatingRun[], vessel: Stated): number | null {
  const powers = runs.flatMap(({ kind, readings, water }) => {
    const [first, last] = [readings[0], readings.at(-1)];
    if (kind === "cooling" || first === undefined || last === undefined || last.seconds <= first.seconds) return [];
    const heat = water.value * WATER_HEAT_CAPACITY + vessel.value;
    return [(heat * (last.celsius - first.celsius)) / (last.seconds - first.seconds)];
  });
  const [first] = powers;
  return first === undefined ? null : Math.max(first, 1);
}
