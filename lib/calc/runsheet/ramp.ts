import type { RampReading } from "./replan";

/** Standard uncertainty of a thermometer in a kettle that is stirred, K. Common practice, no source. */
const THERMOMETER_SD = 0.5;
/** A smaller rise than this tells nothing of the rate, K. */
const LEAST_RISE = 3;
/** No rise to speak of where the sheet has so much of one: the heater is off or has tripped, K. */
const SURELY_RISEN = 3 * LEAST_RISE;
/** The rate falls towards the boil, as the loss grows; share of what remains. */
const CURVATURE = 0.05;

/** A heating that is going on. */
export interface Ramp {
  readonly startMin: number;
  readonly plannedMin: number;
  /** As on the sheet. */
  readonly fromC: number;
  readonly toC: number;
}

export type RampOutlook =
  | { readonly kind: "arrives"; readonly endMin: number; readonly sdMin: number }
  | { readonly kind: "not heating"; readonly celsius: number }
  | { readonly kind: "too early to tell" };

/**
 * Reads off when a ramp arrives, from the temperature that it has reached.
 *
 * With one reading the rise counts from the temperature of the sheet and the moment the heating began; with more, from the
 * first reading to the last.
 *
 * @returns The end of the ramp with its standard uncertainty, minutes; or that it does not heat, or that it is too early.
 * @source Constant power over a constant heat capacity (docs/sources.md#energy-balance)
 */
export function rampOutlook(ramp: Ramp, readings: readonly RampReading[]): RampOutlook {
  const own = readings.filter(({ atMin }) => atMin >= ramp.startMin).sort((one, other) => one.atMin - other.atMin);
  const last = own.at(-1);
  if (last === undefined) return { kind: "too early to tell" };
  const first = own.length > 1 && own[0] !== undefined ? own[0] : { atMin: ramp.startMin, celsius: ramp.fromC };
  if (last.celsius >= ramp.toC) return { kind: "arrives", endMin: last.atMin, sdMin: 0 };
  const riseK = last.celsius - first.celsius;
  const elapsedMin = last.atMin - first.atMin;
  if (riseK < LEAST_RISE) {
    const plannedK = ((ramp.toC - ramp.fromC) * elapsedMin) / ramp.plannedMin;
    return plannedK >= SURELY_RISEN ? { kind: "not heating", celsius: last.celsius } : { kind: "too early to tell" };
  }
  const minPerK = elapsedMin / riseK;
  const remainingMin = (ramp.toC - last.celsius) * minPerK;
  const sdMin = Math.hypot(
    THERMOMETER_SD * minPerK,
    (remainingMin * THERMOMETER_SD * Math.SQRT2) / riseK,
    CURVATURE * remainingMin,
  );
  return { kind: "arrives", endMin: last.atMin + remainingMin, sdMin };
}
