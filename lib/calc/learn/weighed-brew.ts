import { cholesky, solveFactored } from "../numerics/cholesky";
import type { BrewEvidence } from "./brew-evidence";
import type { KettlePrior } from "./kettle-prior";

/** Evidence about the figures of a kettle, counted from a prior's centre in its units; −2 log-likelihood is constant − 2 pull·z + z·precision·z. */
export interface WeighedBrew {
  readonly precision: Float64Array;
  readonly pull: Float64Array;
  /** Squared distance of the readings at z, over its variance. */
  readonly misfitAt: (z: ArrayLike<number>) => number;
  readonly readings: number;
}

/**
 * Brings the evidence of a brew about that brew into evidence about the kettle: its own figures scatter about the kettle's.
 *
 * With scatter Ω = D², precision Λ becomes Λ − ΛD (I + DΛD)⁻¹ DΛ, and likewise the pull.
 *
 * @returns Evidence in the prior's order and units; figures that the prior takes as known drop out.
 * @source Golub and Van Loan 2013, 2.1.4, inverse of a changed matrix (docs/sources.md#golub-van-loan-2013)
 */
export function weighedBrew(prior: KettlePrior, evidence: BrewEvidence): WeighedBrew {
  const { places, centre, unit, scatter } = prior;
  const size = places.length;
  const from = places.map(({ name }) => evidence.figures.indexOf(name));
  const at = from.map((k, i) => (k < 0 ? 0 : ((evidence.at[k] ?? 0) - (centre[i] ?? 0)) / (unit[i] ?? 1)));
  const own = new Float64Array(size * size);
  from.forEach((k, i) => {
    from.forEach((l, j) => {
      own[i * size + j] = k < 0 || l < 0 ? 0 : (evidence.precision[k]?.[l] ?? 0) * (unit[i] ?? 0) * (unit[j] ?? 0);
    });
  });
  const ownPull = Float64Array.from(from, (k, i) => (k < 0 ? 0 : (evidence.pull[k] ?? 0) * (unit[i] ?? 0)));
  const { precision, pull, damped } = scattered(own, ownPull, scatter);
  const misfit = evidence.misfit - dot(ownPull, damped);
  const misfitAt = (z: ArrayLike<number>): number => {
    const away = Float64Array.from(at, (value, i) => (z[i] ?? 0) - value);
    const bent = away.reduce((sum, value, i) => sum + value * product(precision, i, away), 0);
    return Math.max(0, misfit - 2 * dot(pull, away) + bent);
  };
  const fromCentre = pull.map((value, i) => value + product(precision, i, at));
  return { precision, pull: fromCentre, misfitAt, readings: evidence.readings };
}

/**
 * Widens evidence about something by how far that is off from what is asked after.
 *
 * @param scatter - Standard deviation of each; independent.
 * @returns Precision and pull about what is asked after, and Ω (I + ΛΩ)⁻¹ times the pull.
 * @source Golub and Van Loan 2013, 2.1.4, inverse of a changed matrix (docs/sources.md#golub-van-loan-2013)
 */
export function scattered(
  own: Float64Array,
  ownPull: Float64Array,
  scatter: readonly number[],
): { readonly precision: Float64Array; readonly pull: Float64Array; readonly damped: Float64Array } {
  const size = scatter.length;
  const inner = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      inner[i * size + j] = (scatter[i] ?? 0) * (own[i * size + j] ?? 0) * (scatter[j] ?? 0) + (i === j ? 1 : 0);
    }
  }
  const factor = cholesky(inner, size);
  const damp = (row: Float64Array): Float64Array => {
    const turned = row.map((value, j) => value * (scatter[j] ?? 0));
    solveFactored(factor, turned);
    return turned.map((value, j) => value * (scatter[j] ?? 0));
  };
  const damped = damp(ownPull);
  const precision = new Float64Array(size * size);
  const pull = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const row = own.subarray(i * size, (i + 1) * size);
    const less = damp(row);
    for (let j = 0; j < size; j++) precision[i * size + j] = (row[j] ?? 0) - product(own, j, less);
    pull[i] = (ownPull[i] ?? 0) - product(own, i, damped);
  }
  return { precision, pull, damped };
}

/**
 * Multiplies a row of a square matrix, given row after row, by a column.
 *
 * @returns The sum of the products.
 */
export function product(matrix: Float64Array, row: number, column: ArrayLike<number>): number {
  let sum = 0;
  for (let k = 0; k < column.length; k++) sum += (matrix[row * column.length + k] ?? 0) * (column[k] ?? 0);
  return sum;
}

function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < one.length; k++) sum += (one[k] ?? 0) * (other[k] ?? 0);
  return sum;
}
