import { requireInRange } from "../errors";
import { COOLANT_RANGE, EVAPORATION_RANGE, WATER_HEAT_CAPACITY } from "../heat";
import { COOLANT_J_PER_L_K } from "../heat/chill-mixed";
import { celsius, litresPerMinute, wattsPerKelvin } from "../units";
import type { Celsius, Kilograms, LitresPerMinute, WattsPerKelvin } from "../units";
import { requireStated, TRIAL_RANGE, type Estimate, type Stated } from "./estimate";
import { WATER_RANGE } from "./heating-run";

/** Hot water run through a counterflow exchanger at a steady pace. */
export interface CounterflowRun {
  /** What ran through, and in how many seconds. */
  readonly water: Stated<Kilograms>;
  readonly seconds: number;
  readonly hotC: Stated<Celsius>;
  readonly outC: Stated<Celsius>;
  readonly coolantC: Stated<Celsius>;
  readonly coolantFlow: Stated<LitresPerMinute>;
}

export type CounterflowTrial =
  | {
      readonly ok: true;
      readonly conductance: Estimate<WattsPerKelvin>;
      /** Cooling water as it leaves, which can be felt and checked. */
      readonly coolantOutC: Celsius;
    }
  | {
      readonly ok: false;
      /**
       * `too-much-heat`: the cooling water would have to leave hotter than the wort comes: flow or pace is wrong.
       * `too-cold`: it does not leave colder than it came, or colder than the coolant. `not-told`: temperatures that lie
       * this close say too little.
       */
      readonly reason: "too-much-heat" | "too-cold" | "not-told";
    };

const SECONDS_RANGE = { ...TRIAL_RANGE.seconds, min: 10 } as const;
const GOOD_CONDUCTANCE = 0.35;

/**
 * Finds the conductance of a counterflow chiller from one steady run of hot water.
 *
 * Heat given up over the log-mean difference of temperature; what the coolant takes up tells how hot it leaves.
 *
 * @returns Conductance, W/K, with its standard error, to the first order of the stated uncertainties; or why it is not told.
 * @validRange Water of 0 to 102 °C, coolant 0 to 60 °C, 10 s to 48 h.
 * @throws {@link OutOfRangeError} when a number is outside its range.
 * @source Kays and London 1984, log-mean difference (docs/sources.md#kays-london-1984)
 * @example
 * commissionCounterflow(run); // { ok: true, conductance: { value: 610, standardError: 40 }, coolantOutC: 61 }
 */
export function commissionCounterflow(run: CounterflowRun): CounterflowTrial {
  requireStated("water", run.water, WATER_RANGE);
  requireInRange("time", run.seconds, SECONDS_RANGE);
  requireStated("hot water", run.hotC, EVAPORATION_RANGE.celsius);
  requireStated("cooled water", run.outC, EVAPORATION_RANGE.celsius);
  requireStated("coolant temperature", run.coolantC, COOLANT_RANGE);
  requireStated("coolant flow", run.coolantFlow, { ...litresPerMinute.range, min: 0.01 });
  const stated = [run.water, run.hotC, run.outC, run.coolantC, run.coolantFlow];
  const at: readonly number[] = stated.map(({ value }) => value);
  const found = exchange(at, run.seconds);
  if (typeof found === "string") return { ok: false, reason: found };
  let variance = 0;
  for (const [i, { value, sd }] of stated.entries()) {
    if (sd === 0) continue;
    // Half a sd either way, so that the slope is that of the span in which the value lies.
    const [up, down] = [0.5, -0.5].map((half) => exchange(at.with(i, value + half * sd), run.seconds));
    if (up === undefined || down === undefined || typeof up === "string" || typeof down === "string")
      return { ok: false, reason: "not-told" };
    variance += (up.conductance - down.conductance) ** 2;
  }
  const standardError = Math.sqrt(variance);
  if (standardError > GOOD_CONDUCTANCE * found.conductance || found.conductance > wattsPerKelvin.range.max)
    return { ok: false, reason: "not-told" };
  return {
    ok: true,
    conductance: { value: wattsPerKelvin(found.conductance), standardError },
    coolantOutC: celsius(found.coolantOutC),
  };
}

function exchange(
  [kg = 0, hotC = 0, outC = 0, coolantC = 0, flow = 0]: readonly number[],
  seconds: number,
): { readonly conductance: number; readonly coolantOutC: number } | "too-much-heat" | "too-cold" {
  const wortWPerK = (kg * WATER_HEAT_CAPACITY) / seconds;
  const dropK = hotC - outC;
  const coldEndK = outC - coolantC;
  if (dropK <= 0 || coldEndK <= 0) return "too-cold";
  const coolantOutC = coolantC + (wortWPerK * dropK) / ((flow / 60) * COOLANT_J_PER_L_K);
  const hotEndK = hotC - coolantOutC;
  if (!(hotEndK > 0)) return "too-much-heat";
  const excess = hotEndK / coldEndK - 1;
  const logMeanK = Math.abs(excess) < 1e-9 ? coldEndK : (coldEndK * excess) / Math.log1p(excess);
  return { conductance: (wortWPerK * dropK) / logMeanK, coolantOutC };
}
