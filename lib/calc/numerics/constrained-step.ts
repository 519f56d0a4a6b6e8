import type { Bound } from "./derivatives";
import { LINEAR_RANGE } from "./linear-ranges";
import { solveLinear } from "./solve-linear";

export interface Linearised {
  readonly x: readonly number[];
  /** Residuals and their slopes. */
  readonly r: readonly number[];
  readonly slopes: readonly (readonly number[])[];
  /** Constraints and their slopes. */
  readonly c: readonly number[];
  readonly held: readonly (readonly number[])[];
  /** What the slopes leave out of the curvature. */
  readonly curvature: readonly (readonly number[])[];
  /** Size of each unknown. */
  readonly sizes: readonly number[];
  readonly bounds: readonly Bound[];
}

export interface ConstrainedStep {
  readonly move: readonly number[];
  /** Pull of each constraint on the minimum. */
  readonly multipliers: readonly number[];
}

/** Softness that lets constraints depend on one another. */
const SOFT = 1e-12;
/** An unknown this near to a bound, as a share of its size, stands on it. */
const ON_BOUND = 1e-12;

/**
 * Finds the step to the least sum of squares of straight residuals, on straight constraints and up to the first bound.
 *
 * Unknowns that stand on a bound and would cross it are held there.
 *
 * @param at - Functions made straight at a point.
 * @param damping - What is added to the curvature, as a share of it.
 * @returns The step, or null where the equations for it have no answer.
 * @source Nocedal and Wright 2006, equation 18.9 (docs/sources.md#nocedal-wright-2006)
 */
export function constrainedStep(at: Linearised, damping: number): ConstrainedStep | null {
  let free = at.x.map((_, j) => j);
  for (;;) {
    const step = freeStep(at, free, damping);
    if (step === null) return null;
    const inside = free.filter((j) => !crosses(at, j, step.move[j] ?? 0));
    if (inside.length === free.length) return { ...step, move: shortened(at, step.move) };
    free = inside;
  }
}

// The equations of the step in unknowns counted by their size: [H Cᵀ; C 0] [d; λ] = −[g; c].
function freeStep(
  { x, r, slopes, c, held, curvature: rest, sizes }: Linearised,
  free: readonly number[],
  damping: number,
): ConstrainedStep | null {
  if (free.length === 0) return { move: x.map(() => 0), multipliers: c.map(() => 0) };
  const size = (j: number): number => sizes[j] ?? 1;
  const columns = free.map((j) => slopes.map((row) => (row[j] ?? 0) * size(j)));
  const rows = held.map((row) => free.map((j) => (row[j] ?? 0) * size(j)));
  const lengths = rows.map((row) => Math.sqrt(dot(row, row)));
  const curvature = columns.map((a) => columns.map((b) => dot(a, b)));
  const bend = (i: number, j: number): number =>
    (rest[free[i] ?? 0]?.[free[j] ?? 0] ?? 0) * size(free[i] ?? 0) * size(free[j] ?? 0);
  const largest = Math.max(...curvature.map((row, i) => row[i] ?? 0));
  const unit = largest > 0 ? largest : 1;
  const n = free.length;
  const matrix = [
    ...curvature.map((row, i) => [
      ...row.map((entry, j) => (entry + bend(i, j) + (i === j ? damping * Math.max(entry, SOFT * unit) : 0)) / unit),
      ...rows.map((constraint, k) => over(constraint[i] ?? 0, lengths[k] ?? 0)),
    ]),
    ...rows.map((constraint, k) => [
      ...constraint.map((entry) => over(entry, lengths[k] ?? 0)),
      ...rows.map((_, l) => (k === l ? -SOFT : 0)),
    ]),
  ];
  const rhs = [
    ...columns.map((column) => -dot(column, r) / unit),
    ...c.map((value, k) => -over(value, lengths[k] ?? 0)),
  ];
  if ([...matrix, rhs].some((row) => row.some((entry) => !(Math.abs(entry) <= LINEAR_RANGE.entry.max)))) return null;
  const solution = solveLinear({ matrix, rhs });
  if (!solution.ok) return null;
  const move = x.map(() => 0);
  free.forEach((j, i) => (move[j] = (solution.x[i] ?? 0) * size(j)));
  return { move, multipliers: c.map((_, k) => over((solution.x[n + k] ?? 0) * unit, lengths[k] ?? 0)) };
}

// A constraint without slope cannot be met by any step and is left out.
const over = (value: number, length: number): number => (length > 0 ? value / length : 0);

function crosses({ x, bounds, sizes }: Linearised, j: number, part: number): boolean {
  const { min, max } = bounds[j] ?? { min: -Infinity, max: Infinity };
  const near = ON_BOUND * (sizes[j] ?? 1);
  const value = x[j] ?? 0;
  return (part < 0 && value - min <= near) || (part > 0 && max - value <= near);
}

function shortened({ x, bounds }: Linearised, move: readonly number[]): number[] {
  let share = 1;
  move.forEach((part, j) => {
    const { min, max } = bounds[j] ?? { min: -Infinity, max: Infinity };
    const room = part < 0 ? min - (x[j] ?? 0) : max - (x[j] ?? 0);
    if (part !== 0) share = Math.min(share, room / part);
  });
  return move.map((part) => share * part);
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
