import { requireInRange } from "../errors";
import { DormandPrince, type Slopes } from "./dormand-prince";
import { findRoot } from "./find-root";

export type { Slopes } from "./dormand-prince";

export interface OdeProblem {
  readonly slopes: Slopes;
  readonly from: number;
  readonly to: number;
  readonly start: readonly number[];
  /** Error allowed in each step and component, as a share of its size. */
  readonly relative: number;
  /** Error allowed in each step where a component is near zero, in its unit. */
  readonly absolute: number;
  /** Integration ends where this changes sign. */
  readonly event?: (t: number, y: Float64Array) => number;
}

export type OdeOutcome =
  | { readonly ok: true; readonly ended: "at-end" | "at-event"; readonly t: number; readonly y: readonly number[] }
  | {
      readonly ok: false;
      readonly reason: "too-many-steps" | "step-too-small";
      /** How far it came. */
      readonly t: number;
      readonly y: readonly number[];
    };

export const ODE_TOLERANCE_RANGE = { unit: "", min: 1e-14, max: 0.1 } as const;

const FINITE = { unit: "", min: -1e300, max: 1e300 } as const;
const MAX_STEPS = 100_000;

/**
 * Integrates a system of ordinary differential equations with steps that adapt to the error asked for.
 *
 * Runge–Kutta 5(4) of Dormand and Prince, carrying the fifth-order result. An event is located by shortening the step
 * that crosses it, so its place is as exact as any other point.
 *
 * @param problem - Slopes, span, start, tolerances and, where wanted, the event that ends it.
 * @returns Where it ended and the state there, or why it had to stop.
 * @validRange Finite span and start; relative tolerance 1e-14 to 0.1. Not for stiff systems: they end in too many steps.
 * @throws {@link OutOfRangeError} when span, start or a tolerance is outside its range.
 * @source Dormand and Prince 1980, J. Comput. Appl. Math. 6:19 (docs/sources.md#dormand-prince-1980)
 * @source Hairer, Nørsett and Wanner 1993, section II.4, step-size control (docs/sources.md#hairer-1993)
 * @example
 * integrateOde({ slopes: (_t, y, s) => void (s[0] = -(y[0] ?? 0)), from: 0, to: 1, start: [1], relative: 1e-9, absolute: 1e-12 });
 * // { ok: true, ended: "at-end", t: 1, y: [0.36788] }
 */
export function integrateOde(problem: OdeProblem): OdeOutcome {
  checkProblem(problem);
  const { slopes, from, to, start } = problem;
  const method = new DormandPrince(slopes, start.length);
  const y = Float64Array.from(start);
  slopes(from, y, method.k1);
  let t = from;
  let h = firstStep(method, y, problem);
  let eventBefore = problem.event?.(t, y) ?? 0;

  for (let steps = 0; steps < MAX_STEPS; steps++) {
    const left = to - t;
    if (left === 0) return { ok: true, ended: "at-end", t, y: Array.from(y) };
    const last = Math.abs(h) >= Math.abs(left);
    if (last) h = left;
    if (t + h === t) return { ok: false, reason: "step-too-small", t, y: Array.from(y) };
    method.step(t, y, h);
    const error = errorOf(method, y, problem);
    if (!(error <= 1)) {
      h *= Number.isFinite(error) ? Math.max(0.2, 0.9 * error ** -0.2) : 0.2;
      continue;
    }
    if (problem.event !== undefined) {
      const eventAfter = problem.event(t + h, method.next);
      if (eventBefore !== 0 && eventBefore > 0 !== eventAfter > 0) return endAtEvent(method, problem.event, t, y, h);
      eventBefore = eventAfter;
    }
    t = last ? to : t + h;
    y.set(method.next);
    method.k1.set(method.k7);
    h *= Math.min(5, 0.9 * Math.max(error, 1e-10) ** -0.2);
  }
  return { ok: false, reason: "too-many-steps", t, y: Array.from(y) };
}

function checkProblem({ from, to, start, relative, absolute }: OdeProblem): void {
  requireInRange("start of the span", from, FINITE);
  requireInRange("end of the span", to, FINITE);
  for (const value of start) requireInRange("start value", value, FINITE);
  requireInRange("relative tolerance", relative, ODE_TOLERANCE_RANGE);
  requireInRange("absolute tolerance", absolute, { unit: "", min: 0, max: 1e300 });
}

// One hundredth of the time in which the start would double at its own slope; a trifle where it says nothing.
function firstStep(method: DormandPrince, y: Float64Array, { from, to, relative, absolute }: OdeProblem): number {
  let size = 0;
  let slope = 0;
  for (let i = 0; i < y.length; i++) {
    const value = Math.abs(y[i] ?? 0);
    const allowed = absolute + relative * value;
    if (allowed === 0) continue;
    size += (value / allowed) ** 2;
    slope += ((method.k1[i] ?? 0) / allowed) ** 2;
  }
  const telling = size > 1e-10 && slope > 1e-10;
  const length = telling ? 0.01 * Math.sqrt(size / slope) : 1e-6 * Math.abs(to - from);
  return Math.sign(to - from) * Math.min(length, Math.abs(to - from));
}

// Root mean square of the errors, each over what is allowed; NaN where a slope was not finite.
function errorOf(method: DormandPrince, y: Float64Array, { relative, absolute }: OdeProblem): number {
  let sum = 0;
  for (let i = 0; i < y.length; i++) {
    const allowed = absolute + relative * Math.max(Math.abs(y[i] ?? 0), Math.abs(method.next[i] ?? 0));
    const error = method.error[i] ?? 0;
    if (error !== 0) sum += (error / allowed) ** 2;
  }
  return Math.sqrt(sum / Math.max(1, y.length));
}

function endAtEvent(
  method: DormandPrince,
  event: (t: number, y: Float64Array) => number,
  t: number,
  y: Float64Array,
  h: number,
): OdeOutcome {
  const at = (length: number): number => {
    method.step(t, y, length);
    return event(t + length, method.next);
  };
  const signed = Math.sign(h);
  const found = findRoot({
    f: (length) => at(signed * length),
    low: Math.abs(h) * Number.EPSILON,
    high: Math.abs(h),
    tolerance: Math.abs(h) * 1e-13,
  });
  const length = signed * found.x;
  method.step(t, y, length);
  return { ok: true, ended: "at-event", t: t + length, y: Array.from(method.next) };
}
