/** Lower triangle L of a symmetric matrix L Lᵀ that is not negative, row after row. */
export interface Cholesky {
  readonly size: number;
  readonly lower: Float64Array;
  /**
   * Least share of a diagonal entry that the rows before leave of it: 0 where a row follows from others, below 0 where
   * the matrix is no L Lᵀ at all.
   */
  readonly leastShare: number;
}

/** A row that follows from others leaves no more than this of an entry, as a share of the largest. */
const ROUNDING = 1e-9;

/**
 * Factors a symmetric matrix that is positive, or at least not negative.
 *
 * @param matrix - Row after row; only the lower triangle is read.
 * @param size - Number of rows.
 * @returns Its lower triangle, and how far it is from not being positive.
 * @source Golub and Van Loan 2013, 4.2 (docs/sources.md#golub-van-loan-2013)
 */
export function cholesky(matrix: Float64Array, size: number): Cholesky {
  const lower = new Float64Array(size * size);
  let leastShare = Infinity;
  for (let i = 0; i < size; i++) {
    const diagonal = matrix[i * size + i] ?? 0;
    for (let j = 0; j <= i; j++) {
      let left = matrix[i * size + j] ?? 0;
      for (let k = 0; k < j; k++) left -= (lower[i * size + k] ?? 0) * (lower[j * size + k] ?? 0);
      const pivot = lower[j * size + j] ?? 0;
      if (i === j) {
        // Written this way round so that NaN counts as negative.
        leastShare = diagonal > 0 ? Math.min(leastShare, left / diagonal) : -Infinity;
        lower[i * size + i] = Math.sqrt(Math.max(0, left));
      } else if (pivot > 0) lower[i * size + j] = left / pivot;
      else if (Math.abs(left) > ROUNDING * diagonal) leastShare = -Infinity;
    }
  }
  return { size, lower, leastShare };
}

/**
 * Solves L z = right in place.
 *
 * @param z - Right side, replaced by the answer.
 */
export function solveLower({ size, lower }: Cholesky, z: Float64Array): void {
  for (let i = 0; i < size; i++) {
    let left = z[i] ?? 0;
    for (let k = 0; k < i; k++) left -= (lower[i * size + k] ?? 0) * (z[k] ?? 0);
    z[i] = left / (lower[i * size + i] ?? 1);
  }
}

/**
 * Solves Lᵀ x = z in place; with standard normal z the covariance of x is the inverse of the matrix.
 *
 * @param z - Right side, replaced by the answer.
 */
export function solveUpper({ size, lower }: Cholesky, z: Float64Array): void {
  for (let i = size - 1; i >= 0; i--) {
    const x = (z[i] ?? 0) / (lower[i * size + i] ?? 1);
    z[i] = x;
    for (let k = 0; k < i; k++) z[k] = (z[k] ?? 0) - (lower[i * size + k] ?? 0) * x;
  }
}

/**
 * Solves L Lᵀ x = right in place.
 *
 * @param z - Right side, replaced by the answer.
 */
export function solveFactored(factor: Cholesky, z: Float64Array): void {
  solveLower(factor, z);
  solveUpper(factor, z);
}

/**
 * Inverts the matrix that was factored.
 *
 * @returns The inverse, row after row.
 */
export function inverse(factor: Cholesky): Float64Array {
  const { size, lower } = factor;
  const inverted = new Float64Array(size * size);
  for (let column = 0; column < size; column++) {
    const x = inverted.subarray(column * size, (column + 1) * size);
    for (let i = column; i < size; i++) {
      let sum = i === column ? 1 : 0;
      for (let k = column; k < i; k++) sum -= (lower[i * size + k] ?? 0) * (x[k] ?? 0);
      x[i] = sum / (lower[i * size + i] ?? 1);
    }
    solveUpper(factor, x);
  }
  return inverted;
}
