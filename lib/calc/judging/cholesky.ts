/** Lower triangle L of a positive definite matrix L Lᵀ, row after row. */
export interface Cholesky {
  readonly size: number;
  readonly lower: Float64Array;
}

/**
 * Factors a positive definite matrix.
 *
 * @param matrix - Row after row; only the lower triangle is read.
 * @param size - Number of rows.
 * @returns Its lower triangle.
 * @source Golub and Van Loan 2013, 4.2 (docs/sources.md#golub-van-loan-2013)
 */
export function cholesky(matrix: Float64Array, size: number): Cholesky {
  const lower = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (lower[i * size + k] ?? 0) * (lower[j * size + k] ?? 0);
      lower[i * size + j] = i === j ? Math.sqrt(sum) : sum / (lower[j * size + j] ?? 1);
    }
  }
  return { size, lower };
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
