import { requireInRange } from "../errors";
import { exactDot } from "./exact-dot";
import { Householder } from "./householder";
import { LINEAR_RANGE, requireLength, requireRows, scaleOf } from "./linear-ranges";

export interface LeastSquaresProblem {
  /** One row of regressors for each value; a constant is a regressor of 1. */
  readonly rows: readonly (readonly number[])[];
  readonly values: readonly number[];
  /** Inverse variances up to a common factor; all equal where left out. */
  readonly weights?: readonly number[];
}

export type LeastSquaresFit =
  | {
      readonly ok: true;
      readonly coefficients: readonly number[];
      readonly standardErrors: readonly number[];
      readonly covariance: readonly (readonly number[])[];
      /** Residual sd of a value of weight 1. */
      readonly residualSd: number;
      readonly residualSquares: number;
      readonly df: number;
    }
  | {
      readonly ok: false;
      /** Regressors depend on one another, or there are no more values than unknowns, so no error can be told. */
      readonly reason: "rank-deficient" | "too-few-values";
      /** How many regressors are independent. */
      readonly rank: number;
    };

const REFINEMENTS = 4;
/** A regressor that is nowhere larger than this says nothing. */
const NOTHING = 1e-40;

/**
 * Fits coefficients to more values than there are unknowns, with the least sum of weighted squared residuals.
 *
 * Reflections instead of normal equations, and residuals with twice the digits to correct the answer: it is right to the last
 * digits for the numbers given. What powers and products lost before they were given, no solver can restore.
 *
 * @param problem - Regressors, values and, where wanted, weights.
 * @returns Coefficients with errors and covariance; or how many regressors are independent.
 * @validRange Up to 200 unknowns and 20 000 values.
 * @throws {@link OutOfRangeError} when rows differ in length, values or weights do not fit, or a number is outside its range.
 * @source Björck 1967, iterative refinement; Golub and Van Loan 2013, chapter 5 (docs/sources.md#bjorck-1967)
 * @example
 * leastSquares({ rows: [[1, 0], [1, 1], [1, 2]], values: [1, 3, 4] }); // coefficients [1.1667, 1.5]
 */
export function leastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  const { rows, values, weights } = problem;
  check(problem);
  const roots = values.map((_, i) => Math.sqrt(weights?.[i] ?? 1));
  const columns = (rows[0] ?? []).map((_, j) => rows.map((row, i) => (row[j] ?? 0) * at(roots, i)));
  const scales = columns.map((column) => scaleOf(column, NOTHING));
  const scaled = columns.map((column, j) => column.map((entry) => entry * at(scales, j)));
  const target = values.map((value, i) => value * at(roots, i));
  if (rows.length <= columns.length)
    return { ok: false, reason: "too-few-values", rank: independent(scaled, rows.length) };
  const factors = new Householder(scaled);
  if (factors.rank < columns.length) return { ok: false, reason: "rank-deficient", rank: factors.rank };

  const { x, residual } = refined(factors, scaled, target);
  const df = values.length - columns.length;
  const residualSquares = exactDot(0, residual, residual, 1);
  const inverse = inverseOfNormal(factors);
  const covariance = inverse.map((row, i) =>
    row.map((entry, j) => ((entry * residualSquares) / df) * at(scales, i) * at(scales, j)),
  );
  return {
    ok: true,
    coefficients: x.map((value, j) => value * at(scales, j)),
    standardErrors: covariance.map((row, j) => Math.sqrt(at(row, j))),
    covariance,
    residualSd: Math.sqrt(residualSquares / df),
    residualSquares,
    df,
  };
}

function check({ rows, values, weights }: LeastSquaresProblem): void {
  requireInRange("number of values", rows.length, LINEAR_RANGE.rows);
  const unknowns = requireInRange("number of unknowns", rows[0]?.length ?? 0, LINEAR_RANGE.unknowns);
  requireRows("row", rows, unknowns);
  requireLength("number of values", values.length, rows.length);
  for (const value of values) requireInRange("value", value, LINEAR_RANGE.entry);
  if (weights === undefined) return;
  requireLength("number of weights", weights.length, rows.length);
  for (const weight of weights) requireInRange("weight", weight, LINEAR_RANGE.weight);
}

// With fewer rows than columns the rows take the columns' place; the rank is the same.
function independent(columns: readonly (readonly number[])[], length: number): number {
  const turned = Array.from({ length }, (_, i) => columns.map((column) => at(column, i)));
  return new Householder(turned.map((row) => row.map((entry) => entry * scaleOf(row, NOTHING)))).rank;
}

// Unknowns and residuals are corrected together: r + A x = b and Aᵀ r = 0.
function refined(
  factors: Householder,
  columns: readonly (readonly number[])[],
  target: readonly number[],
): { readonly x: number[]; readonly residual: number[] } {
  let x = columns.map(() => 0);
  let residual = target.map(() => 0);
  for (let round = 0; round <= REFINEMENTS; round++) {
    const offEquation = target.map((value, i) => {
      const row = columns.map((column) => at(column, i));
      return exactDot(value, [at(residual, i), ...row], [1, ...x], -1);
    });
    const offNormal = columns.map((column) => exactDot(0, column, residual, -1));
    const step = correction(factors, offEquation, offNormal);
    x = x.map((value, j) => value + at(step.x, j));
    residual = residual.map((value, i) => value + at(step.residual, i));
  }
  return { x, residual };
}

function correction(
  factors: Householder,
  offEquation: readonly number[],
  offNormal: readonly number[],
): { readonly x: readonly number[]; readonly residual: Float64Array } {
  const upper = factors.solveTransposed(factors.order.map((j) => at(offNormal, j)));
  const turned = Float64Array.from(offEquation);
  factors.turn(turned);
  const inOrder = factors.solve(upper.map((value, k) => at(turned, k) - value));
  turned.set(upper);
  factors.turnBack(turned);
  const x = offNormal.map(() => 0);
  factors.order.forEach((j, k) => (x[j] = at(inOrder, k)));
  return { x, residual: turned };
}

// (AᵀA)⁻¹ = R⁻¹ R⁻ᵀ, brought back into the order of the columns.
function inverseOfNormal(factors: Householder): number[][] {
  const n = factors.rank;
  const unit = (k: number): number[] => Array.from({ length: n }, (_, i) => (i === k ? 1 : 0));
  const inverse = Array.from({ length: n }, () => Array.from({ length: n }, () => 0));
  for (let k = 0; k < n; k++) {
    const column = factors.solve(factors.solveTransposed(unit(k)));
    column.forEach((value, i) => {
      const row = inverse[at(factors.order, i)];
      if (row !== undefined) row[at(factors.order, k)] = value;
    });
  }
  return inverse;
}

const at = (values: ArrayLike<number>, i: number): number => values[i] ?? 0;
