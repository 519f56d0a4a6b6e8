import { requireInRange } from "../errors";
import { exactDot } from "./exact-dot";
import { LINEAR_RANGE, requireLength, requireRows, scaleOf } from "./linear-ranges";

export type LinearSolution =
  | { readonly ok: true; readonly x: readonly number[] }
  | {
      readonly ok: false;
      /** The equations depend on one another, as far as the digits of a number tell. */
      readonly reason: "singular";
      /** How many of them are independent. */
      readonly rank: number;
    };

/** Rounds of refinement; each gains as many digits as the elimination had right. */
const REFINEMENTS = 6;
/** Where the last round still moves the answer by more than this share, elimination had no digit right. */
const SETTLED = 1e-6;
/** An equation whose coefficients are all this small says nothing. */
const NOTHING = 1e-100;

/**
 * Solves as many linear equations as there are unknowns.
 *
 * Gaussian elimination with the largest pivot, on rows and columns scaled to the same size; the residual, taken with twice the
 * digits, corrects the answer.
 *
 * @param a.matrix - Rows of coefficients, square.
 * @param a.rhs - Right-hand sides.
 * @returns The unknowns, to the last digits unless the matrix is nearly singular; or how many equations are independent.
 * @validRange Up to 200 equations.
 * @throws {@link OutOfRangeError} when the matrix is empty or not square, the right-hand side does not fit, or a coefficient is
 *   not a number of −1e60 to 1e60.
 * @source Golub and Van Loan 2013, sections 3.4 and 3.5 (docs/sources.md#golub-van-loan-2013)
 * @example
 * solveLinear({ matrix: [[2, 1], [1, 3]], rhs: [3, 5] }); // { ok: true, x: [0.8, 1.4] }
 */
export function solveLinear(a: {
  readonly matrix: readonly (readonly number[])[];
  readonly rhs: readonly number[];
}): LinearSolution {
  const n = requireInRange("number of equations", a.matrix.length, LINEAR_RANGE.unknowns);
  requireRows("row", a.matrix, n);
  requireLength("number of right-hand sides", a.rhs.length, n);
  for (const value of a.rhs) requireInRange("right-hand side", value, LINEAR_RANGE.entry);

  const rowScales = a.matrix.map((row) => scaleOf(row, NOTHING));
  const columnScales = Array.from({ length: n }, (_, j) =>
    scaleOf(
      a.matrix.map((row, i) => (row[j] ?? 0) * (rowScales[i] ?? 1)),
      NOTHING,
    ),
  );
  const scaled = a.matrix.map((row, i) => row.map((entry, j) => entry * (rowScales[i] ?? 1) * (columnScales[j] ?? 1)));
  const right = a.rhs.map((value, i) => value * (rowScales[i] ?? 1));
  const factors = factorise(scaled);
  if ("rank" in factors) return { ok: false, reason: "singular", rank: factors.rank };

  let x = substitute(factors, right);
  let moved = 0;
  for (let round = 0; round < REFINEMENTS; round++) {
    const residual = scaled.map((row, i) => exactDot(right[i] ?? 0, row, x, -1));
    const correction = substitute(factors, residual);
    x = x.map((value, i) => value + (correction[i] ?? 0));
    moved = Math.max(...correction.map(Math.abs));
  }
  // Written this way round so that NaN counts as unsettled.
  if (!(moved <= SETTLED * Math.max(...x.map(Math.abs)))) return { ok: false, reason: "singular", rank: n - 1 };
  return { ok: true, x: x.map((value, j) => value * (columnScales[j] ?? 1)) };
}

interface Factors {
  /** Lower and upper triangle in one, rows in the order of `order`. */
  readonly rows: readonly (readonly number[])[];
  readonly order: readonly number[];
}

function factorise(matrix: readonly (readonly number[])[]): Factors | { readonly rank: number } {
  const n = matrix.length;
  const rows = matrix.map((row) => [...row]);
  const order = rows.map((_, i) => i);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (size(rows, i, k) > size(rows, pivot, k)) pivot = i;
    if (size(rows, pivot, k) <= n * Number.EPSILON) return { rank: k };
    const top = rows[pivot] ?? [];
    [rows[k], rows[pivot]] = [top, rows[k] ?? []];
    [order[k], order[pivot]] = [order[pivot] ?? 0, order[k] ?? 0];
    for (const row of rows.slice(k + 1)) {
      const factor = (row[k] ?? 0) / (top[k] ?? 1);
      row[k] = factor;
      for (let j = k + 1; j < n; j++) row[j] = (row[j] ?? 0) - factor * (top[j] ?? 0);
    }
  }
  return { rows, order };
}

function substitute({ rows, order }: Factors, right: readonly number[]): number[] {
  const x = order.map((i) => right[i] ?? 0);
  for (let i = 0; i < x.length; i++) for (let j = 0; j < i; j++) x[i] = (x[i] ?? 0) - (rows[i]?.[j] ?? 0) * (x[j] ?? 0);
  for (let i = x.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < x.length; j++) x[i] = (x[i] ?? 0) - (rows[i]?.[j] ?? 0) * (x[j] ?? 0);
    x[i] = (x[i] ?? 0) / (rows[i]?.[i] ?? 1);
  }
  return x;
}

const size = (rows: readonly (readonly number[])[], i: number, j: number): number => Math.abs(rows[i]?.[j] ?? 0);
