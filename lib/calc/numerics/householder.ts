/** Columns whose rest is below this share of their length count as spanned by those before. */
const SPANNED = 1e-14;

/**
 * Factors a tall matrix into reflections and a triangle, columns in the order of what is left of their length.
 *
 * @source Golub and Van Loan 2013, algorithms 5.2.1 and 5.4.1; Businger and Golub 1965 (docs/sources.md#golub-van-loan-2013)
 */
export class Householder {
  /** Which column stands at each place of the triangle. */
  readonly order: number[];
  readonly rank: number;
  /** Reflections below the diagonal, the triangle above it, by columns. */
  private readonly columns: Float64Array[];
  private readonly diagonal: number[] = [];

  /** @param columns - Columns of about equal length, each with at least as many entries as there are columns. */
  constructor(columns: readonly (readonly number[])[]) {
    this.columns = columns.map((column) => Float64Array.from(column));
    this.order = columns.map((_, j) => j);
    const lengths = this.columns.map((column) => norm(column, 0));
    let k = 0;
    for (; k < this.columns.length; k++) {
      this.pivot(k);
      const column = this.column(k);
      const length = norm(column, k);
      if (!(length > SPANNED * (lengths[this.order[k] ?? 0] ?? 0))) break;
      // The sign that makes the reflection longest, so that nothing cancels.
      const reflected = at(column, k) > 0 ? -length : length;
      column[k] = at(column, k) - reflected;
      this.diagonal.push(reflected);
      for (let j = k + 1; j < this.columns.length; j++) this.reflect(k, this.column(j));
    }
    this.rank = k;
  }

  /** Turns a vector into the axes of the factorisation, in place. */
  turn(vector: Float64Array): void {
    for (let k = 0; k < this.rank; k++) this.reflect(k, vector);
  }

  /** Turns it back. */
  turnBack(vector: Float64Array): void {
    for (let k = this.rank - 1; k >= 0; k--) this.reflect(k, vector);
  }

  // Solves R x = right, in the order of the triangle.
  solve(right: ArrayLike<number>): number[] {
    const x = Array.from({ length: this.rank }, (_, i) => right[i] ?? 0);
    for (let i = this.rank - 1; i >= 0; i--) {
      for (let j = i + 1; j < this.rank; j++) x[i] = at(x, i) - this.triangle(i, j) * at(x, j);
      x[i] = at(x, i) / this.triangle(i, i);
    }
    return x;
  }

  // Solves Rᵀ x = right, in the order of the triangle.
  solveTransposed(right: ArrayLike<number>): number[] {
    const x = Array.from({ length: this.rank }, (_, i) => right[i] ?? 0);
    for (let i = 0; i < this.rank; i++) {
      for (let j = 0; j < i; j++) x[i] = at(x, i) - this.triangle(j, i) * at(x, j);
      x[i] = at(x, i) / this.triangle(i, i);
    }
    return x;
  }

  private triangle(i: number, j: number): number {
    return i === j ? at(this.diagonal, i) : at(this.column(j), i);
  }

  private column(j: number): Float64Array {
    return this.columns[j] ?? new Float64Array(0);
  }

  private pivot(k: number): void {
    let longest = k;
    for (let j = k + 1; j < this.columns.length; j++) {
      if (norm(this.column(j), k) > norm(this.column(longest), k)) longest = j;
    }
    [this.columns[k], this.columns[longest]] = [this.column(longest), this.column(k)];
    [this.order[k], this.order[longest]] = [at(this.order, longest), at(this.order, k)];
  }

  private reflect(k: number, vector: Float64Array): void {
    const mirror = this.column(k);
    let along = 0;
    for (let i = k; i < vector.length; i++) along += at(mirror, i) * at(vector, i);
    // vᵀv = −2 · reflected · v₀ follows from how v was made.
    const share = along / (at(this.diagonal, k) * at(mirror, k));
    for (let i = k; i < vector.length; i++) vector[i] = at(vector, i) + share * at(mirror, i);
  }
}

function norm(vector: ArrayLike<number>, from: number): number {
  let sum = 0;
  for (let i = from; i < vector.length; i++) sum += at(vector, i) ** 2;
  return Math.sqrt(sum);
}

const at = (values: ArrayLike<number>, i: number): number => values[i] ?? 0;
