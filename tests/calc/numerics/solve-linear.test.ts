import { describe, expect, it } from "vitest";
import { solveLinear } from "@/lib/calc/numerics";
import { expectWithin } from "../../support/expect-within";

function solved(matrix: readonly (readonly number[])[], rhs: readonly number[]): readonly number[] {
  const solution = solveLinear({ matrix, rhs });
  if (!solution.ok) throw new Error(solution.reason);
  return solution.x;
}

/** Hilbert's matrix times the least common multiple of its denominators: whole numbers, each held exactly. */
const hilbert = (n: number, multiple: number): number[][] =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => multiple / (i + j + 1)));

describe("solveLinear", () => {
  it("solves two equations by hand: 2x + y = 3, x + 3y = 5", () => {
    // 5x = 4, so x = 0.8 and y = 1.4.
    const [x = NaN, y = NaN] = solved(
      [
        [2, 1],
        [1, 3],
      ],
      [3, 5],
    );
    expectWithin(x, 0.8, 1e-15);
    expectWithin(y, 1.4, 1e-15);
  });

  it("changes rows where the first pivot is nothing", () => {
    expect(
      solved(
        [
          [0, 1, 0],
          [0, 0, 2],
          [4, 0, 0],
        ],
        [5, 6, 8],
      ),
    ).toEqual([2, 5, 3]);
  });

  it("keeps every digit on a small pivot that swallows the rest (Forsythe and Moler's example)", () => {
    // 1e-20 x + y = 1 and x + y = 2 have x = 1/(1 − 1e-20), y = 1 − 1e-20/(1 − 1e-20): 1 and 1 in doubles.
    expect(
      solved(
        [
          [1e-20, 1],
          [1, 1],
        ],
        [1, 2],
      ),
    ).toEqual([1, 1]);
  });

  it.each([
    { n: 3, multiple: 60 },
    { n: 5, multiple: 2520 },
    { n: 8, multiple: 360_360 },
    { n: 11, multiple: 232_792_560 },
  ])("solves Hilbert's equations of order $n exactly: the sums of the rows have all ones", ({ n, multiple }) => {
    const matrix = hilbert(n, multiple);
    const x = solved(
      matrix,
      matrix.map((row) => row.reduce((sum, entry) => sum + entry, 0)),
    );
    x.forEach((value) => expectWithin(value, 1, 1e-14));
  });

  it("does not care for the units of equations and unknowns", () => {
    // The first example with x in 1e40ths and the second equation times 1e-30.
    const [x = NaN, y = NaN] = solved(
      [
        [2e40, 1],
        [1e10, 3e-30],
      ],
      [3, 5e-30],
    );
    expectWithin(x * 1e40, 0.8, 1e-15);
    expectWithin(y, 1.4, 1e-15);
  });

  it("says how many equations are independent", () => {
    const singular = (matrix: number[][]): unknown => solveLinear({ matrix, rhs: matrix.map(() => 1) });
    expect(
      singular([
        [1, 2, 3],
        [4, 5, 6],
        [7, 8, 9],
      ]),
    ).toEqual({ ok: false, reason: "singular", rank: 2 });
    expect(
      singular([
        [1, 2],
        [2, 4],
      ]),
    ).toEqual({ ok: false, reason: "singular", rank: 1 });
    expect(
      singular([
        [0, 0],
        [0, 0],
      ]),
    ).toEqual({ ok: false, reason: "singular", rank: 0 });
  });

  it("solves a single equation, and gives zeros for zeros", () => {
    expect(solved([[4]], [6])).toEqual([1.5]);
    expect(
      solved(
        [
          [2, 1],
          [1, 3],
        ],
        [0, 0],
      ),
    ).toEqual([0, 0]);
  });

  it("refuses what is not square or not a number", () => {
    expect(() => solveLinear({ matrix: [], rhs: [] })).toThrow("number of equations 0 is outside 1 to 200");
    expect(() => solveLinear({ matrix: [[1, 2]], rhs: [1] })).toThrow("length of a row 2 is outside 1 to 1");
    expect(() => solveLinear({ matrix: [[1]], rhs: [1, 2] })).toThrow("number of right-hand sides 2 is outside 1 to 1");
    expect(() => solveLinear({ matrix: [[NaN]], rhs: [1] })).toThrow("entry NaN is outside -1e+60 to 1e+60");
    expect(() => solveLinear({ matrix: [[1]], rhs: [NaN] })).toThrow("right-hand side NaN is outside -1e+60 to 1e+60");
  });
});
