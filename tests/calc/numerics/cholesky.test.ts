import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cholesky, inverse, solveLower, solveUpper } from "@/lib/calc/numerics/cholesky";

/** The example of many textbooks, with a factor of whole numbers. Above the diagonal stands what must not be read. */
const MATRIX = Float64Array.of(4, NaN, NaN, 12, 37, NaN, -16, -43, 98);
const LOWER = [2, 0, 0, 6, 1, 0, -8, 5, 3];

describe("cholesky", () => {
  it("finds the factor of whole numbers of the textbook's matrix", () => {
    const { size, lower, leastShare } = cholesky(MATRIX, 3);
    expect(size).toBe(3);
    expect([...lower]).toEqual(LOWER);
    // By hand: 4 of 4 is left in the first row, 1 of 37 in the second, 9 of 98 in the third.
    expect(leastShare).toBeCloseTo(1 / 37, 14);
  });

  it("solves both triangles", () => {
    const factor = cholesky(MATRIX, 3);
    // By hand: L (1, 2, 3) = (2, 8, 11) and Lᵀ (1, 2, 3) = (−10, 17, 9).
    const below = Float64Array.of(2, 8, 11);
    solveLower(factor, below);
    expect([...below]).toEqual([1, 2, 3]);
    const above = Float64Array.of(-10, 17, 9);
    solveUpper(factor, above);
    expect([...above]).toEqual([1, 2, 3]);
  });

  it("inverts the matrix by its cofactors", () => {
    // By hand: the determinant is (2 · 1 · 3)² = 36.
    const cofactors = [1777, -488, 76, -488, 136, -20, 76, -20, 4];
    for (const [i, entry] of inverse(cholesky(MATRIX, 3)).entries()) {
      expect(entry).toBeCloseTo((cofactors[i] ?? NaN) / 36, 10);
    }
  });

  it("says of a matrix that is not positive by how much", () => {
    expect(cholesky(Float64Array.of(1, 1, 1, 1), 2)).toMatchObject({
      lower: Float64Array.of(1, 0, 1, 0),
      leastShare: 0,
    });
    expect(cholesky(Float64Array.of(1, 2, 2, 1), 2).leastShare).toBe(-3);
    expect(cholesky(Float64Array.of(1, 2, 2, 1), 2).lower[3]).toBe(0);
    expect(cholesky(Float64Array.of(0, 1, 1, 1), 2).leastShare).toBe(-Infinity);
    expect(cholesky(Float64Array.of(-1), 1).leastShare).toBe(-Infinity);
    expect(cholesky(Float64Array.of(1, 0, 0, NaN), 2).leastShare).toBe(-Infinity);
  });

  it("goes on below a row that follows from others, unless what is below contradicts it", () => {
    const follows = cholesky(Float64Array.of(1, 0, 0, 1, 1, 0, 2, 2, 5), 3);
    expect([...follows.lower]).toEqual([1, 0, 0, 1, 0, 0, 2, 0, 1]);
    expect(follows.leastShare).toBe(0);
    expect(cholesky(Float64Array.of(1, 0, 0, 1, 1, 0, 2, 3, 50), 3).leastShare).toBe(-Infinity);
  });

  it("gives back any matrix that was made of a triangle, and its inverse undoes it", () => {
    const entry = fc.double({ min: -3, max: 3, noNaN: true });
    const pivot = fc.double({ min: 0.5, max: 3, noNaN: true });
    const triangle = fc
      .integer({ min: 1, max: 5 })
      .chain((size) =>
        fc.tuple(...Array.from({ length: size }, (_, i) => fc.tuple(...Array.from({ length: i }, () => entry), pivot))),
      );
    fc.assert(
      fc.property(triangle, (rows) => {
        const size = rows.length;
        const matrix = Float64Array.from({ length: size * size }, (_, at) => {
          const [one, other] = [rows[Math.floor(at / size)] ?? [], rows[at % size] ?? []];
          return one.reduce((sum, value, k) => sum + value * (other[k] ?? 0), 0);
        });
        const factor = cholesky(matrix, size);
        expect(factor.leastShare).toBeGreaterThan(0);
        for (const [i, row] of rows.entries()) {
          for (const [j, value] of row.entries()) expect(factor.lower[i * size + j]).toBeCloseTo(value, 6);
        }
        const inverted = inverse(factor);
        const scale = Math.max(...matrix.map(Math.abs)) * Math.max(...inverted.map(Math.abs));
        for (let i = 0; i < size; i++) {
          for (let j = 0; j < size; j++) {
            let sum = 0;
            for (let k = 0; k < size; k++) sum += (matrix[i * size + k] ?? 0) * (inverted[k * size + j] ?? 0);
            expect(Math.abs(sum - (i === j ? 1 : 0))).toBeLessThan(1e-12 * size * scale);
          }
        }
      }),
    );
  });
});
