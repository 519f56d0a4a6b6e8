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
