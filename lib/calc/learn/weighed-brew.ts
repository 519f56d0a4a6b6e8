import { cholesky, solveLower } from "../numerics/cholesky";
import type { BrewEvidence } from "./brew-evidence";
import type { KettlePrior } from "./kettle-prior";
import { product } from "./product";

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
  const ownPull = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const k = from[i] ?? -1;
    if (k < 0) continue;
    const row = evidence.precision[k];
    const scale = unit[i] ?? 0;
    ownPull[i] = (evidence.pull[k] ?? 0) * scale;
    for (let j = 0; j < size; j++) own[i * size + j] = (row?.[from[j] ?? -1] ?? 0) * scale * (unit[j] ?? 0);
  }
  const { precision, pull, taken } = scattered(own, ownPull, scatter);
  const misfit = evidence.misfit - taken;
  const misfitAt = (z: ArrayLike<number>): number => {
    const away = Float64Array.from(at, (value, i) => (z[i] ?? 0) - value);
    let bent = 0;
    for (let i = 0; i < size; i++) bent += (away[i] ?? 0) * product(precision, i, away);
    return Math.max(0, misfit - 2 * dot(pull, away) + bent);
  };
  const fromCentre = pull.map((value, i) => value + product(precision, i, at));
  return { precision, pull: fromCentre, misfitAt, readings: evidence.readings };
}

/**
 * Widens evidence about something by how far that is off from what is asked after.
 *
 * With I + DΛD = LLᵀ and X = L⁻¹DΛ the precision is Λ − XᵀX; with x = L⁻¹D times the pull, the pull loses Xᵀx and the misfit xᵀx.
 *
 * @param scatter - Standard deviation of each; independent.
 * @returns Precision and pull about what is asked after, and what the scatter takes off the misfit.
 * @source Golub and Van Loan 2013, 2.1.4, inverse of a changed matrix (docs/sources.md#golub-van-loan-2013)
 */
export function scattered(
  own: Float64Array,
  ownPull: Float64Array,
  scatter: readonly number[],
): { readonly precision: Float64Array; readonly pull: Float64Array; readonly taken: number } {
  const size = scatter.length;
  const inner = new Float64Array(size * size);
  // Row k holds L⁻¹D times column k of Λ, which is symmetric.
  const rows = new Float64Array(size * size);
  const x = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    x[i] = (scatter[i] ?? 0) * (ownPull[i] ?? 0);
    for (let j = 0; j < size; j++) {
      const scaled = (own[i * size + j] ?? 0) * (scatter[j] ?? 0);
      rows[i * size + j] = scaled;
      inner[i * size + j] = (scatter[i] ?? 0) * scaled + (i === j ? 1 : 0);
    }
  }
  const factor = cholesky(inner, size);
  solveLower(factor, x);
  for (let k = 0; k < size; k++) solveLower(factor, rows.subarray(k * size, (k + 1) * size));
  const precision = Float64Array.from(own);
  const pull = Float64Array.from(ownPull);
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < size; k++) pull[i] = (pull[i] ?? 0) - (rows[i * size + k] ?? 0) * (x[k] ?? 0);
    for (let j = 0; j <= i; j++) {
      let less = 0;
      for (let k = 0; k < size; k++) less += (rows[i * size + k] ?? 0) * (rows[j * size + k] ?? 0);
      precision[i * size + j] = (precision[i * size + j] ?? 0) - less;
      precision[j * size + i] = precision[i * size + j] ?? 0;
    }
  }
  return { precision, pull, taken: dot(x, x) };
}

function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < one.length; k++) sum += (one[k] ?? 0) * (other[k] ?? 0);
  return sum;
}
