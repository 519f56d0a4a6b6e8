import { cholesky, solveLower, solveUpper } from "../numerics/cholesky";

/** Less of a diagonal entry than this is rounding: its row follows from the others. */
const LEAST_SHARE = 1e-13;

/**
 * Solves a symmetric positive system by Cholesky's method.
 *
 * @returns The solution, or null where the matrix is not positive to working precision.
 */
export function solveNormal(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const factor = cholesky(Float64Array.from(matrix.flat()), right.length);
  // Written this way round so that NaN fails too.
  if (!(factor.leastShare > LEAST_SHARE)) return null;
  const solution = Float64Array.from(right);
  solveLower(factor, solution);
  solveUpper(factor, solution);
  return [...solution];
}
