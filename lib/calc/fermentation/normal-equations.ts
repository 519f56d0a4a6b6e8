/**
 * Solves a symmetric positive system by Cholesky's method.
 *
 * @returns The solution, or null where the matrix is not positive to working precision.
 */
export function solveNormal(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const n = right.length;
  const lower = Array.from({ length: n }, () => new Float64Array(n));
  const at = (row: number, column: number): number => lower[row]?.[column] ?? 0;
  for (let row = 0; row < n; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let rest = matrix[row]?.[column] ?? 0;
      for (let k = 0; k < column; k += 1) rest -= at(row, k) * at(column, k);
      const target = lower[row];
      if (target === undefined) return null;
      if (row !== column) target[column] = rest / at(column, column);
      // Written this way round so that NaN fails too.
      else if (rest > 1e-13 * (matrix[row]?.[row] ?? 0)) target[row] = Math.sqrt(rest);
      else return null;
    }
  }
  const solution = [...right];
  for (let row = 0; row < n; row += 1) {
    for (let k = 0; k < row; k += 1) solution[row] = (solution[row] ?? 0) - at(row, k) * (solution[k] ?? 0);
    solution[row] = (solution[row] ?? 0) / at(row, row);
  }
  for (let row = n - 1; row >= 0; row -= 1) {
    for (let k = row + 1; k < n; k += 1) solution[row] = (solution[row] ?? 0) - at(k, row) * (solution[k] ?? 0);
    solution[row] = (solution[row] ?? 0) / at(row, row);
  }
  return solution;
}
