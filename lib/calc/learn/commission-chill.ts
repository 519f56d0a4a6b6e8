import { requireInRange } from "../errors";
import { joulesPerKelvin, wattsPerKelvin, type WattsPerKelvin } from "../units";
import { ChillModel, CONDUCTANCE } from "./chill-model";
import { requireChillRun, type ChillRun, type ChillTrialInput } from "./chill-run";
import { requireStated, TRIAL_RANGE, type Estimate } from "./estimate";
import { fitTrial, type Scatter } from "./fit-trial";

export type ChillTrial =
  | {
      readonly ok: true;
      readonly conductance: Estimate<WattsPerKelvin>;
      readonly scatter: Scatter;
      /** The fitted course of each run, minutes after its first reading. */
      readonly curves: readonly (readonly (readonly [minute: number, celsius: number])[])[];
      readonly residuals: readonly (readonly number[])[];
    }
  | {
      readonly ok: false;
      readonly reason: "too-few-readings" | "does-not-fall" | "too-warm" | "did-not-converge";
      readonly run: number;
    }
  | {
      readonly ok: false;
      /**
       * `coolant-limited`: the cooling water leaves nearly as warm as the wort, so the coil hardly shows; a larger flow
       * would tell. `too-short`: further down it would show.
       */
      readonly reason: "coolant-limited" | "too-short";
    };

/** A conductance has to be known to this share of itself. */
const GOOD_CONDUCTANCE = 0.25;
/** From here on the coolant has taken nearly all that it can: 1 − exp(−1.5) is 78 %. */
const LIMITED_UNITS = 1.5;

/**
 * Finds the conductance of an immersion chiller or an ice bath from the cooling of plain water.
 *
 * C dT/dt = −pull (T − Tc) − U (T − Ta), the balance of `chill`, with pull = ṁc (1 − exp(−G/ṁc)) for a coil and G for
 * ice. Water, vessel, loss, flow and coolant are taken as stated, and what is uncertain of them is passed on. Stir as on a
 * brew day: a coil in still water does less than half.
 *
 * @returns Conductance, W/K, with its standard error and the fitted curves; or why it is not told.
 * @validRange Water of 0 to 102 °C, coolant 0 to 60 °C, air −30 to 60 °C.
 * @throws {@link OutOfRangeError} when a number is outside its range or readings are out of order.
 * @source Kays and London 1984, effectiveness (docs/sources.md#kays-london-1984); energy balance
 *   (docs/sources.md#energy-balance); least squares: docs/sources.md#marquardt-1963
 * @example
 * commissionChill({ kind: "immersion", runs: [run], vesselHeatCapacity, lossCoefficient }); // { ok: true, conductance: { value: 412, standardError: 14 }, … }
 */
export function commissionChill(a: ChillTrialInput): ChillTrial {
  const { runs, kind } = a;
  requireInRange("number of runs", runs.length, TRIAL_RANGE.runs);
  requireStated("vessel heat capacity", a.vesselHeatCapacity, joulesPerKelvin.range);
  requireStated("heat loss", a.lossCoefficient, wattsPerKelvin.range);
  for (const run of runs) requireChillRun(run);
  for (const [r, run] of runs.entries()) {
    const problem = problemOf(run, kind);
    if (problem !== null) return { ok: false, reason: problem, run: r };
  }
  const model = new ChillModel(a);
  const fit = fitTrial(model.unknowns, model.residuals);
  if (!fit.ok) return { ok: false, reason: fit.reason === "not-told" ? limited(a, Infinity) : fit.reason, run: 0 };
  const conductance = fit.estimates[CONDUCTANCE];
  if (conductance === undefined) throw new Error("the conductance is the first unknown");
  // Written this way round so that a conductance below nothing fails too.
  if (!(conductance.value > 0 && conductance.standardError <= GOOD_CONDUCTANCE * conductance.value)) {
    return { ok: false, reason: limited(a, conductance.value) };
  }
  const x = fit.estimates.map(({ value }) => value);
  let taken = 0;
  return {
    ok: true,
    conductance: { value: wattsPerKelvin(conductance.value), standardError: conductance.standardError },
    scatter: fit.scatter,
    curves: runs.map((run, r) => model.curve(x, r, run)),
    residuals: runs.map(({ readings }) => fit.residuals.slice(taken, (taken += readings.length))),
  };
}

function problemOf(
  { readings, coolantC }: ChillRun,
  kind: ChillTrialInput["kind"],
): "too-few-readings" | "does-not-fall" | "too-warm" | null {
  const [first, last] = [readings[0], readings.at(-1)];
  if (readings.length < 3 || first === undefined || last === undefined) return "too-few-readings";
  if (first.celsius - last.celsius <= first.sd + last.sd || last.seconds <= first.seconds) return "does-not-fall";
  const coldestC = kind === "ice bath" ? 0 : coolantC.value;
  return first.celsius > coldestC ? null : "too-warm";
}

function limited({ kind, runs }: ChillTrialInput, conductance: number): "coolant-limited" | "too-short" {
  const flows = runs.map((run) => ChillModel.flowWPerK(run.coolantFlow.value));
  return kind === "immersion" && conductance > LIMITED_UNITS * Math.max(...flows) ? "coolant-limited" : "too-short";
}
