import { COOLANT_J_PER_L_K } from "../heat/chill-mixed";
import { WATER_HEAT_CAPACITY } from "../heat";
import type { ChillRun, ChillTrialInput } from "./chill-run";
import { nearlyExact, type Stated } from "./estimate";
import type { Unknown } from "./fit-trial";

/** Places of the unknowns that all runs share. */
export const CONDUCTANCE = 0;
const VESSEL = 1;
const LOSS = 2;
const SHARED = 3;
/** Start, water, coolant and flow of each run. */
const PER_RUN = 4;
const CURVE_PIECES = 24;

/** Residuals of the readings of several chills with one chiller. */
export class ChillModel {
  readonly unknowns: readonly Unknown[];

  constructor(private readonly trial: ChillTrialInput) {
    const { runs, vesselHeatCapacity, lossCoefficient } = trial;
    const startWPerK = Math.max(1, ...runs.map((run) => this.firstGuess(run)));
    this.unknowns = [
      { start: startWPerK, scale: startWPerK },
      known(vesselHeatCapacity),
      known(lossCoefficient),
      ...runs.flatMap(({ readings, water, coolantC, coolantFlow }) => [
        { start: readings[0]?.celsius ?? 90, scale: 10 },
        known(water),
        known(coolantC),
        known(coolantFlow),
      ]),
    ];
  }

  readonly residuals = (x: readonly number[]): number[] =>
    this.trial.runs.flatMap((run, r) =>
      run.readings.map(({ seconds, celsius, sd }) => {
        const at = seconds - (run.readings[0]?.seconds ?? 0);
        return (celsius - this.celsiusAt(x, r, run, at)) / sd;
      }),
    );

  // The exponential that a well-mixed vessel follows.
  celsiusAt(x: readonly number[], r: number, run: ChillRun, seconds: number): number {
    const at = SHARED + PER_RUN * r;
    const of = (i: number): number => x[i] ?? 0;
    const coldC = this.trial.kind === "ice bath" ? 0 : of(at + 2);
    const pulled = this.pull(of(CONDUCTANCE), of(at + 3));
    const all = pulled + of(LOSS);
    const heat = of(at + 1) * WATER_HEAT_CAPACITY + of(VESSEL);
    const endC = all === 0 ? of(at) : (pulled * coldC + of(LOSS) * run.ambientC) / all;
    return endC + (of(at) - endC) * Math.exp((-all * seconds) / heat);
  }

  curve(x: readonly number[], r: number, run: ChillRun): readonly (readonly [minute: number, celsius: number])[] {
    const lengthS = (run.readings.at(-1)?.seconds ?? 0) - (run.readings[0]?.seconds ?? 0);
    return Array.from({ length: CURVE_PIECES + 1 }, (_, i) => {
      const at = (lengthS * i) / CURVE_PIECES;
      return [at / 60, this.celsiusAt(x, r, run, at)] as const;
    });
  }

  static flowWPerK(litresPerMinute: number): number {
    return (litresPerMinute / 60) * COOLANT_J_PER_L_K;
  }

  // Heat drawn per kelvin above the cold side, W/K.
  private pull(conductance: number, litresPerMinute: number): number {
    if (this.trial.kind === "ice bath") return conductance;
    const flow = ChillModel.flowWPerK(litresPerMinute);
    return flow <= 0 ? 0 : -flow * Math.expm1(-conductance / flow);
  }

  // From the first fall, as if nothing else cooled.
  private firstGuess({ readings, water, coolantC, coolantFlow }: ChillRun): number {
    const [first, last] = [readings[0], readings.at(-1)];
    if (first === undefined || last === undefined) return 1;
    const coldC = this.trial.kind === "ice bath" ? 0 : coolantC.value;
    const ratio = (first.celsius - coldC) / Math.max(0.5, last.celsius - coldC);
    const heat = water.value * WATER_HEAT_CAPACITY + this.trial.vesselHeatCapacity.value;
    const pulled = (heat * Math.log(Math.max(1.01, ratio))) / Math.max(1, last.seconds - first.seconds);
    const flow = ChillModel.flowWPerK(coolantFlow.value);
    return this.trial.kind === "ice bath" || flow <= 0 ? pulled : -flow * Math.log1p(-Math.min(0.9, pulled / flow));
  }
}

function known(stated: Stated): Unknown {
  return { start: stated.value, scale: Math.max(Math.abs(stated.value), 1), prior: nearlyExact(stated) };
}
