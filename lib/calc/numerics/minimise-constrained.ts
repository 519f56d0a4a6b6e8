import { requireInRange } from "../errors";
import { constrainedStep, type ConstrainedStep, type Linearised } from "./constrained-step";
import { constraintCurvature } from "./curvature";
import { type Bound, derivatives, type VectorFunction } from "./derivatives";
import { LINEAR_RANGE, requireLength } from "./linear-ranges";

export interface ConstrainedProblem {
  /** What is to be small: residuals, each over its own uncertainty. */
  readonly residuals: VectorFunction;
  readonly start: readonly number[];
  /** What has to be nothing. */
  readonly constraints?: VectorFunction;
  readonly bounds?: readonly Bound[];
  /** Size of each unknown, by which a step is called small; the start's where left out, or 1 where that is 0. */
  readonly scale?: readonly number[];
}

export interface ConstrainedPoint {
  /** The best point found. */
  readonly x: readonly number[];
  readonly sumOfSquares: number;
  /** Largest constraint that is left. */
  readonly violation: number;
  readonly iterations: number;
}

export type ConstrainedMinimum =
  | (ConstrainedPoint & { readonly ok: true })
  | (ConstrainedPoint & {
      readonly ok: false;
      /** No step comes nearer to the constraints; steps never settled; or a function gave what is not a finite number. */
      readonly reason: "constraints-not-met" | "did-not-converge" | "not-finite";
    });

export const MINIMISE_RANGE = {
  start: LINEAR_RANGE.entry,
  scale: { unit: "", min: 1e-30, max: 1e30 },
  unknowns: { unit: "", min: 1, max: 100 },
} as const;

const MOST_ITERATIONS = 300;
/** A step this small beside the unknowns is none, and so is a constraint beside its slopes. */
const SETTLED = 1e-9;
/** Nearly no damping: just enough where a direction does not matter. */
const UNDAMPED = 1e-12;
const HOPELESS = 1e12;
/** Sums that differ by less cannot be told apart; a short step is then taken on trust. */
const ROUNDING = 1e-13;
const ROUNDING_OF_LIMIT = 1e-2;
const SHORT = 1e-4;

/**
 * Makes a sum of squares least while some functions are held at nothing and unknowns within bounds.
 *
 * Steps of Gauss and Newton on residuals and constraints made straight, with damping (Levenberg, Marquardt) that grows while a
 * step does not help; slopes are central differences. It finds the minimum that the start leads to, not the least of several.
 *
 * @param problem - Residuals, start and, where wanted, constraints, bounds and scales.
 * @returns The point, to about eight digits, and how it ended.
 * @validRange Up to 100 unknowns; functions smooth on the way from the start.
 * @throws {@link OutOfRangeError} when start, bounds or scales are not numbers, differ in number, or the start is out of bounds.
 * @source Levenberg 1944, Marquardt 1963 (docs/sources.md#marquardt-1963); Nocedal and Wright 2006, chapter 18
 *   (docs/sources.md#nocedal-wright-2006)
 * @example
 * minimiseConstrained({ residuals: ([x = 0, y = 0]) => [x - 3, y - 1], start: [0, 0], constraints: ([x = 0, y = 0]) => [x + y - 2] });
 * // { ok: true, x: [2, 0], sumOfSquares: 2, … }
 */
export function minimiseConstrained(problem: ConstrainedProblem): ConstrainedMinimum {
  const scales = checkedScales(problem);
  const bounds = problem.bounds ?? [];
  const constraints = problem.constraints ?? ((): number[] => []);
  const evaluate = (x: readonly number[]): Evaluation => evaluation(x, problem.residuals(x), constraints(x));
  let here = evaluate(problem.start);
  if (!here.finite) return ended(here, 0, "not-finite");
  let damping = 1e-3;
  let penalties = here.c.map(() => 0);
  let multipliers: readonly number[] = penalties;
  for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
    const slopes = derivatives(problem.residuals, here.x, scales, bounds);
    const held = derivatives(constraints, here.x, scales, bounds);
    if (slopes === null || held === null) return ended(here, iteration, "not-finite");
    const sizes = here.x.map((value, j) => Math.max(Math.abs(value), scales[j] ?? 1));
    // The pull that the step before told; without constraints nothing bends.
    const curvature = multipliers.some((pull) => pull !== 0)
      ? constraintCurvature(constraints, multipliers, here.x, sizes, bounds)
      : [];
    const local: Linearised = { x: here.x, r: here.r, c: here.c, slopes, held, curvature, sizes, bounds };
    const limits = held.map((row) => SETTLED * steepness(row, sizes));
    const met = here.c.every((value, k) => Math.abs(value) <= (limits[k] ?? 0));
    const full = constrainedStep(local, UNDAMPED);
    const left = full === null ? Infinity : lengthOf(full.move, sizes);
    if (left <= SETTLED) return ended(here, iteration, met ? undefined : "constraints-not-met");

    penalties = penalties.map((penalty, k) => Math.max(penalty, 2 * Math.abs(full?.multipliers[k] ?? 0)));
    const next = better({ local, here, damping, penalties, evaluate, limits: met && left <= SHORT ? limits : null });
    if (next === null) return ended(here, iteration, met ? undefined : "constraints-not-met");
    multipliers = next.step.multipliers;
    here = next.point;
    damping = next.damping;
  }
  return ended(here, MOST_ITERATIONS, "did-not-converge");
}

interface Evaluation {
  readonly x: readonly number[];
  readonly r: readonly number[];
  readonly c: readonly number[];
  readonly squares: number;
  readonly finite: boolean;
}

function evaluation(x: readonly number[], r: readonly number[], c: readonly number[]): Evaluation {
  const squares = r.reduce((sum, value) => sum + value * value, 0);
  return { x, r, c, squares, finite: Number.isFinite(squares) && c.every(Number.isFinite) };
}

// The first point along growing damping at which the sum of squares and the penalties for constraints come down.
function better(a: {
  readonly local: Linearised;
  readonly here: Evaluation;
  readonly damping: number;
  readonly penalties: readonly number[];
  readonly evaluate: (x: readonly number[]) => Evaluation;
  /** Constraints as small as these count as met; null where a step has to prove itself. */
  readonly limits: readonly number[] | null;
}): { readonly point: Evaluation; readonly step: ConstrainedStep; readonly damping: number } | null {
  const merit = (point: Evaluation): number =>
    point.squares / 2 + point.c.reduce((sum, value, k) => sum + (a.penalties[k] ?? 0) * Math.abs(value), 0);
  const now = merit(a.here);
  const slack =
    a.limits === null
      ? 0
      : ROUNDING * now + ROUNDING_OF_LIMIT * a.limits.reduce((sum, limit, k) => sum + limit * (a.penalties[k] ?? 0), 0);
  for (let damping = a.damping; damping <= HOPELESS; damping *= 8) {
    const step = constrainedStep(a.local, damping);
    if (step === null) continue;
    const point = a.evaluate(a.here.x.map((value, j) => within(value + (step.move[j] ?? 0), a.local.bounds[j])));
    if (!point.finite) continue;
    const then = merit(point);
    // A step that helped at once may be longer next time.
    if (then < now + slack)
      return { point, step, damping: damping === a.damping ? Math.max(1e-15, damping / 16) : damping };
  }
  return null;
}

function ended(
  point: Evaluation,
  iterations: number,
  reason?: "constraints-not-met" | "did-not-converge" | "not-finite",
): ConstrainedMinimum {
  const violation = Math.max(0, ...point.c.map(Math.abs));
  const found = {
    x: point.x,
    sumOfSquares: Number.isFinite(point.squares) ? point.squares : Number.MAX_VALUE,
    violation: Number.isFinite(violation) ? violation : Number.MAX_VALUE,
    iterations,
  };
  return reason === undefined ? { ok: true, ...found } : { ok: false, reason, ...found };
}

function checkedScales({ start, bounds, scale }: ConstrainedProblem): number[] {
  requireInRange("number of unknowns", start.length, MINIMISE_RANGE.unknowns);
  if (bounds !== undefined) requireLength("number of bounds", bounds.length, start.length);
  if (scale !== undefined) requireLength("number of scales", scale.length, start.length);
  for (const [j, value] of start.entries()) {
    const { min, max } = bounds?.[j] ?? MINIMISE_RANGE.start;
    requireInRange("lower bound", min, { ...MINIMISE_RANGE.start, min: -Infinity });
    requireInRange("upper bound", max, { ...MINIMISE_RANGE.start, min, max: Infinity });
    requireInRange("start", requireInRange("start", value, MINIMISE_RANGE.start), { unit: "", min, max });
  }
  return start.map((value, j) =>
    requireInRange("scale", scale?.[j] ?? (value === 0 ? 1 : clampedScale(value)), MINIMISE_RANGE.scale),
  );
}

const clampedScale = (value: number): number =>
  Math.min(MINIMISE_RANGE.scale.max, Math.max(MINIMISE_RANGE.scale.min, Math.abs(value)));

const within = (value: number, bound: Bound | undefined): number =>
  bound === undefined ? value : Math.min(bound.max, Math.max(bound.min, value));

const lengthOf = (move: readonly number[], sizes: readonly number[]): number =>
  Math.max(0, ...move.map((part, j) => Math.abs(part) / (sizes[j] ?? 1)));

const steepness = (slopes: readonly number[], sizes: readonly number[]): number =>
  Math.max(0, ...slopes.map((slope, j) => Math.abs(slope) * (sizes[j] ?? 1)));
