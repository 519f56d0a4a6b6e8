import { requireInRange } from "../errors";
import { EVAPORATION_RANGE } from "../heat";
import { joulesPerKelvin, watts, wattsPerKelvin, type Celsius, type JoulesPerKelvin } from "../units";
import type { Watts, WattsPerKelvin } from "../units";
import { requireStated, TRIAL_RANGE, type Estimate, type Stated } from "./estimate";
import { fitTrial, type Scatter, type TrialFit } from "./fit-trial";
import { HeatingModel, LOSS, POWER, VESSEL } from "./heating-model";
import { requireRun, type HeatingRun } from "./heating-run";
import { areTold, whatWouldTell, type MoreNeeded } from "./what-would-tell";

type FittedCurve = readonly (readonly [minute: number, celsius: number])[];

export interface HeatingFigures {
  readonly ok: true;
  /** Power that reaches the water; null where no run was heated. */
  readonly power: Estimate<Watts> | null;
  readonly lossCoefficient: Estimate<WattsPerKelvin>;
  /** Heat capacity of the vessel, where the trial knows it better than what was stated; else null. */
  readonly vesselHeatCapacity: Estimate<JoulesPerKelvin> | null;
  /** Between power and loss: a trial that puts one too high does so with the other. */
  readonly correlation: number;
  readonly scatter: Scatter;
  /** The fitted course of each run, minutes after its first reading. */
  readonly curves: readonly FittedCurve[];
  /** Residuals over their uncertainty, run by run and reading by reading; null for one that does not count. */
  readonly residuals: readonly (readonly (number | null)[])[];
  /** Readings next to the boil, which are not heating any more and do not count. */
  readonly leftOut: number;
}

export type HeatingTrial =
  | HeatingFigures
  | {
      readonly ok: false;
      readonly reason: "too-few-readings" | "does-not-rise" | "does-not-fall" | "did-not-converge";
      /** The run, counted from 0, that it is about. */
      readonly run: number;
    }
  | { readonly ok: false; readonly reason: "not-separable"; readonly needs: readonly MoreNeeded[] };

export interface HeatingTrialInput {
  readonly runs: readonly HeatingRun[];
  readonly boilingC: Celsius;
  /** What is known of the empty vessel before the trial. */
  readonly vesselHeatCapacity: Stated<JoulesPerKelvin>;
}

/** Closer than this to the boil, water evaporates at the element instead of warming, K. Common practice, no source. */
const NEXT_TO_BOIL_K = 1;
/** The vessel counts as measured where the trial leaves less than this of what was uncertain before. */
const LEARNED_SHARE = 0.5;
/** A loss alone has to be known to this share of itself. */
const GOOD_LOSS = 0.3;
const CURVE_PIECES = 24;

/**
 * Finds what reaches the water and what the walls lose, from water heated and left to cool in the kettle.
 *
 * C dT/dt = P − U (T − Ta) − A·q(T), the balance of `heatUp`, fitted to all runs together. Power and losses show apart
 * only in the bend of the curve, so a short ramp is refused, with what would tell. From temperatures alone only their
 * ratio to the heat capacity shows: water and vessel are taken as stated with their uncertainty, unless two runs with
 * different amounts of water tell the vessel as well.
 *
 * @returns Power, W, loss, W/K, and heat capacity, J/K, with standard errors; or why they are not told.
 * @validRange Water of 0 to 102 °C, air −30 to 60 °C, up to 20 runs of 48 hours.
 * @throws {@link OutOfRangeError} when an argument is outside its range or readings are out of order.
 * @source Energy balance (docs/sources.md#energy-balance); evaporation after Carrier (docs/sources.md#ashrae-carrier);
 *   least squares: docs/sources.md#marquardt-1963; widened errors: docs/sources.md#birge-1932
 * @example
 * commissionHeating({ runs: [heatUp, coolDown], boilingC: celsius(100), vesselHeatCapacity: { value: joulesPerKelvin(4000), sd: 800 } });
 * // { ok: true, power: { value: 2380, standardError: 25 }, lossCoefficient: { value: 7.9, standardError: 0.2 }, … }
 */
export function commissionHeating({ runs, boilingC, vesselHeatCapacity }: HeatingTrialInput): HeatingTrial {
  requireInRange("number of runs", runs.length, TRIAL_RANGE.runs);
  requireInRange("boiling point", boilingC, EVAPORATION_RANGE.celsius);
  requireStated("vessel heat capacity", vesselHeatCapacity, joulesPerKelvin.range);
  for (const run of runs) requireRun(run);
  const below = runs.map((run) => belowBoil(run, boilingC));
  const wrong = below.map(problemOf).findIndex((problem) => problem !== null);
  const problem = below[wrong] === undefined ? null : problemOf(below[wrong]);
  if (problem !== null) return { ok: false, reason: problem, run: wrong };

  const extended = (more: readonly HeatingRun[]): HeatingModel => new HeatingModel(more, vesselHeatCapacity);
  const model = extended(below);
  const fit = fitTrial(model.unknowns, model.residuals);
  if (!fit.ok && fit.reason === "did-not-converge") return { ok: false, reason: fit.reason, run: 0 };
  if (!fit.ok || !isTold(fit, below, boilingC)) {
    const x = fit.ok ? fit.estimates.map(({ value }) => value) : model.unknowns.map(({ start }) => start);
    return { ok: false, reason: "not-separable", needs: whatWouldTell({ model, extended, x, boilingC }) };
  }
  return { ...figuresOf(model, fit, vesselHeatCapacity), ...countedOf(runs, fit, boilingC) };
}

const counts = ({ kind }: HeatingRun, celsius: number, boilingC: Celsius): boolean =>
  kind === "cooling" || celsius <= boilingC - NEXT_TO_BOIL_K;

function belowBoil(run: HeatingRun, boilingC: Celsius): HeatingRun {
  return { ...run, readings: run.readings.filter(({ celsius }) => counts(run, celsius, boilingC)) };
}

function problemOf({ kind, readings }: HeatingRun): "too-few-readings" | "does-not-rise" | "does-not-fall" | null {
  const [first, last] = [readings[0], readings.at(-1)];
  if (readings.length < 3 || first === undefined || last === undefined) return "too-few-readings";
  const riseK = last.celsius - first.celsius;
  const noise = first.sd + last.sd;
  if (kind === "heating") return riseK > noise && last.seconds > first.seconds ? null : "does-not-rise";
  return -riseK > noise && last.seconds > first.seconds ? null : "does-not-fall";
}

type Fitted = Extract<TrialFit, { readonly ok: true }>;

function isTold(fit: Fitted, runs: readonly HeatingRun[], boilingC: Celsius): boolean {
  const [power, loss] = [fit.estimates[POWER], fit.estimates[LOSS]];
  if (power === undefined || loss === undefined) return false;
  if (runs.every(({ kind }) => kind === "cooling")) return loss.standardError <= GOOD_LOSS * loss.value;
  const coldestC = Math.min(...runs.map(({ ambientC }) => ambientC));
  return areTold({
    powerW: power.value,
    powerError: power.standardError,
    lossError: loss.standardError,
    boilK: boilingC - coldestC,
  });
}

// Residuals come for the readings that count, in their order; each goes back to its own reading.
function countedOf(
  runs: readonly HeatingRun[],
  fit: Fitted,
  boilingC: Celsius,
): Pick<HeatingFigures, "residuals" | "leftOut"> {
  let taken = 0;
  const residuals = runs.map((run) =>
    run.readings.map(({ celsius }) => (counts(run, celsius, boilingC) ? (fit.residuals[taken++] ?? null) : null)),
  );
  return { residuals, leftOut: residuals.flat().filter((residual) => residual === null).length };
}

function figuresOf(model: HeatingModel, fit: Fitted, stated: Stated): Omit<HeatingFigures, "residuals" | "leftOut"> {
  const x = fit.estimates.map(({ value }) => value);
  const estimate = <Q extends number>(at: number, make: (value: number) => Q): Estimate<Q> => ({
    // A kettle that loses next to nothing may come out a hair below it.
    value: make(Math.max(0, x[at] ?? 0)),
    standardError: fit.estimates[at]?.standardError ?? 0,
  });
  const vessel = estimate(VESSEL, joulesPerKelvin);
  return {
    ok: true,
    power: model.runs.some(({ kind }) => kind === "heating") ? estimate(POWER, watts) : null,
    lossCoefficient: estimate(LOSS, wattsPerKelvin),
    vesselHeatCapacity: vessel.standardError < LEARNED_SHARE * stated.sd ? vessel : null,
    correlation: fit.correlation(POWER, LOSS),
    scatter: fit.scatter,
    curves: model.runs.map((run, r) => {
      const lengthS = model.secondsOf(run).at(-1) ?? 0;
      const times = Array.from({ length: CURVE_PIECES + 1 }, (_, i) => (lengthS * i) / CURVE_PIECES);
      return model.course(x, r, times).map((here, i) => [(times[i] ?? 0) / 60, here] as const);
    }),
  };
}
