import type { Spread } from "./replan";
import type { StepName } from "./step";

/** Spreads that hold where nothing better is known. Common practice, no source. */
export const USUAL_SPREAD: Spread = { heating: 0.06, cooling: 0.2, hands: 0.2 };

export const SPREAD_RANGE = { unit: "", min: 0, max: 1 } as const;

/** How far one run is from the pace of its day, and the clock from the run, minutes. Common practice, no source. */
const RUN_SD_MIN = 3;

export type Family = "heating" | "cooling" | "hands" | "timed";

const FAMILIES: Readonly<Record<StepName, Family>> = {
  prepare: "hands",
  "weigh out": "hands",
  fill: "hands",
  "heat strike water": "heating",
  "dough in": "hands",
  rest: "timed",
  "heat between rests": "heating",
  "lift and drain": "hands",
  sparge: "hands",
  "heat to the boil": "heating",
  "hot-break watch": "timed",
  boil: "timed",
  "hop addition": "timed",
  "cool to the stand": "cooling",
  stand: "timed",
  chill: "cooling",
  transfer: "hands",
  pitch: "timed",
  clean: "hands",
  extra: "hands",
};

/**
 * Tells what decides how long a step takes.
 *
 * @returns The heater, the chiller, hands, or a clock that is set.
 */
export const familyOf = (name: StepName): Family => FAMILIES[name];

/** How long runs of one family take against the sheet, with its standard uncertainty. */
export interface Pace {
  readonly factor: number;
  readonly sd: number;
}

/** One run that tells of the pace. */
export interface Run {
  readonly plannedMin: number;
  readonly tookMin: number;
  /** Standard uncertainty beyond that of any run, minutes. */
  readonly sdMin: number;
}

/**
 * Learns the pace of a day from the runs that are over: what is known beforehand and each run weigh by their precision.
 *
 * @param spread - Relative standard uncertainty of the pace beforehand, around 1.
 * @returns The pace; 1 where nothing has run or nothing may differ.
 * @source Bayes' theorem for normal errors (docs/sources.md#gelman-2013)
 */
export function paceOf(spread: number, runs: readonly Run[]): Pace {
  if (spread === 0) return { factor: 1, sd: 0 };
  let precision = 1 / spread ** 2;
  let weighed = precision;
  for (const { plannedMin, tookMin, sdMin } of runs) {
    const variance = RUN_SD_MIN ** 2 + sdMin ** 2;
    precision += plannedMin ** 2 / variance;
    weighed += (plannedMin * tookMin) / variance;
  }
  return { factor: weighed / precision, sd: 1 / Math.sqrt(precision) };
}
