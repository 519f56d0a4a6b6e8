import { celsius, type Celsius } from "../units";
import { covarianceAt, withPriors } from "./fit-trial";
import type { HeatingModel } from "./heating-model";
import { LOSS, POWER } from "./heating-model";
import type { HeatingRun, TimedTemperature } from "./heating-run";

/** A reading more that would tell power and losses apart: near the boil, or while the kettle cools. */
export type MoreNeeded = "hotter" | "cooling";

/** Power, and losses at the boil as a share of it, have to be known to this. */
const GOOD_ENOUGH = 0.1;
const COOL_MINUTES = [0, 20, 40, 60];
const LONGEST_HEATING_S = 43_200;
const HEATING_STEP_S = 60;

/**
 * Judges whether power and losses are told apart, by their standard errors and by the kelvins between air and boil.
 *
 * @returns Whether both are known to a tenth of the power.
 */
export function areTold(a: {
  readonly powerW: number;
  readonly powerError: number;
  readonly lossError: number;
  readonly boilK: number;
}): boolean {
  return a.powerError <= GOOD_ENOUGH * a.powerW && a.lossError * a.boilK <= GOOD_ENOUGH * a.powerW;
}

/**
 * Tries out which reading more would tell power and losses apart.
 *
 * A reading is imagined where the fitted kettle would be, near the boil or in an hour of cooling, and the errors are
 * worked out with it; its value does not matter for that, only where it lies.
 *
 * @returns What would do; both where neither would alone.
 */
export function whatWouldTell(a: {
  readonly model: HeatingModel;
  readonly extended: (runs: readonly HeatingRun[]) => HeatingModel;
  readonly x: readonly number[];
  readonly boilingC: Celsius;
}): readonly MoreNeeded[] {
  const { model, extended, x, boilingC } = a;
  const last = model.runs.findLastIndex(({ kind }) => kind === "heating");
  const run = model.runs[last];
  if (run === undefined) return ["cooling"];
  const sd = Math.max(...run.readings.map((reading) => reading.sd));
  const hotter = hotterReading(model, x, last, boilingC, sd);
  const powerW = x[POWER] ?? 0;
  const wouldDo = (runs: readonly HeatingRun[], at: readonly number[]): boolean => {
    const next = extended(runs);
    const scale = next.unknowns.map((each) => each.scale);
    const covariance = covarianceAt(withPriors(next.unknowns, next.residuals), at, scale);
    return (
      covariance !== null &&
      areTold({
        powerW,
        powerError: Math.sqrt(covariance[POWER]?.[POWER] ?? Infinity),
        lossError: Math.sqrt(covariance[LOSS]?.[LOSS] ?? Infinity),
        boilK: boilingC - run.ambientC,
      })
    );
  };
  const hot = hotter?.celsius ?? run.readings.at(-1)?.celsius ?? boilingC;
  const cooling: HeatingRun = {
    ...run,
    kind: "cooling",
    readings: COOL_MINUTES.map((minute) => ({ seconds: 60 * minute, celsius: hot, sd })),
  };
  const needs: MoreNeeded[] = [];
  if (hotter !== null && wouldDo(withReading(model.runs, last, hotter), x)) needs.push("hotter");
  if (wouldDo([...model.runs, cooling], [...x, hot, run.water.value])) needs.push("cooling");
  return needs.length === 0 ? ["hotter", "cooling"] : needs;
}

/** Where the fitted kettle comes near the boil; null where it does not, or is there already. */
function hotterReading(
  model: HeatingModel,
  x: readonly number[],
  r: number,
  boilingC: Celsius,
  sd: number,
): TimedTemperature | null {
  const first = model.runs[r]?.readings[0]?.seconds ?? 0;
  const times = Array.from({ length: LONGEST_HEATING_S / HEATING_STEP_S }, (_, i) => (i + 1) * HEATING_STEP_S);
  const course = model.course(x, r, times);
  const at = course.findIndex((here) => here >= boilingC - 3);
  const [second, here] = [times[at], course[at]];
  return second === undefined || here === undefined
    ? null
    : { seconds: first + second, celsius: celsius(Math.min(here, boilingC)), sd };
}

function withReading(runs: readonly HeatingRun[], r: number, reading: TimedTemperature): readonly HeatingRun[] {
  return runs.map((run, i) => {
    if (i !== r) return run;
    const readings = [...run.readings, reading].sort((one, other) => one.seconds - other.seconds);
    return { ...run, readings };
  });
}
