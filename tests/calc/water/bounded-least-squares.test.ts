import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boundedLeastSquares } from "@/lib/calc/water/bounded-least-squares";
import { expectWithin } from "../../support/expect-within";

describe("boundedLeastSquares", () => {
  it("solves two equations exactly where the bounds leave room: 2x + y = 5, x + 3y = 10", () => {
    const [x, y] = boundedLeastSquares({
      columns: [
        [2, 1],
        [1, 3],
      ],
      target: [5, 10],
      upper: [9, 9],
    });
    expectWithin(x ?? NaN, 1, 1e-12);
    expectWithin(y ?? NaN, 3, 1e-12);
  });

  it("stops an unknown at its upper bound and lets the other make the best of it", () => {
    // y = 2: least squares of 2x = 3 and x = 4 is x = 10 / 5; with y = 1 of 2x = 4 and x = 7, 15 / 5.
    const problem = {
      columns: [
        [2, 1],
        [1, 3],
      ],
      target: [5, 10],
    };
    const two = boundedLeastSquares({ ...problem, upper: [9, 2] });
    expectWithin(two[0] ?? NaN, 2, 1e-12);
    expect(two[1]).toBe(2);
    const one = boundedLeastSquares({ ...problem, upper: [9, 1] });
    expectWithin(one[0] ?? NaN, 3, 1e-12);
    expect(one[1]).toBe(1);
  });

  it("holds at zero what would be negative: x − y against (2, −1) along the axes", () => {
    const columns = [
      [1, 0],
      [0, 1],
    ];
    expect(boundedLeastSquares({ columns, target: [2, -1], upper: [5, 5] })).toEqual([2, 0]);
    expect(boundedLeastSquares({ columns, target: [2, -1], upper: [1, 5] })).toEqual([1, 0]);
    expect(boundedLeastSquares({ columns, target: [-2, -1], upper: [5, 5] })).toEqual([0, 0]);
  });

  it("drops an unknown that entered first when another explains more", () => {
    // The first column points most along the target, yet the other two together reach it exactly.
    const columns = [
      [1, 1, 0.2],
      [1, 0, 0],
      [0, 1, 0],
    ];
    const [first, second, third] = boundedLeastSquares({ columns, target: [2, 1, 0], upper: [9, 9, 9] });
    expectWithin(first ?? NaN, 0, 1e-12);
    expectWithin(second ?? NaN, 2, 1e-12);
    expectWithin(third ?? NaN, 1, 1e-12);
  });

  it("brings an unknown back from its upper bound when later ones make it too much", () => {
    // Alone the first would go to its bound; the exact answer is 0.5 and 1.
    const columns = [
      [1, 1],
      [1, 0],
    ];
    const [first, second] = boundedLeastSquares({ columns, target: [1.5, 0.5], upper: [0.9, 2] });
    expectWithin(first ?? NaN, 0.5, 1e-12);
    expectWithin(second ?? NaN, 1, 1e-12);
  });

  it("uses one of two columns that say the same, and none without a length, a bound or a target", () => {
    const twice = boundedLeastSquares({
      columns: [
        [1, 1],
        [2, 2],
      ],
      target: [4, 4],
      upper: [9, 9],
    });
    expectWithin((twice[0] ?? NaN) + 2 * (twice[1] ?? NaN), 4, 1e-12);
    expect(twice.filter((x) => x > 0)).toHaveLength(1);
    expect(boundedLeastSquares({ columns: [[0, 0]], target: [1, 1], upper: [9] })).toEqual([0]);
    expect(boundedLeastSquares({ columns: [[1, 0]], target: [1, 1], upper: [0] })).toEqual([0]);
    expect(boundedLeastSquares({ columns: [[1, 0]], target: [0, 0], upper: [1] })).toEqual([0]);
    expect(boundedLeastSquares({ columns: [], target: [1], upper: [] })).toEqual([]);
  });

  it("meets the conditions of Karush, Kuhn and Tucker whatever it is given", () => {
    const entry = fc.double({ min: -3, max: 3, noNaN: true });
    const column = fc.array(entry, { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(column, fc.double({ min: 0, max: 2, noNaN: true })), { maxLength: 6 }),
        column,
        (unknowns, target) => {
          const columns = unknowns.map(([values]) => values);
          const upper = unknowns.map(([, most]) => most);
          const x = boundedLeastSquares({ columns, target, upper });
          const rest = target.map(
            (value, i) => value - columns.reduce((sum, c, j) => sum + (c[i] ?? 0) * (x[j] ?? 0), 0),
          );
          columns.forEach((values, j) => {
            const slope = values.reduce((sum, value, i) => sum + value * (rest[i] ?? 0), 0);
            const [at, most] = [x[j] ?? NaN, upper[j] ?? NaN];
            expect(at >= 0 && at <= most).toBe(true);
            if (at < most) expect(slope).toBeLessThan(1e-7);
            if (at > 0) expect(slope).toBeGreaterThan(-1e-7);
          });
        },
      ),
      { numRuns: 500 },
    );
  });
});
