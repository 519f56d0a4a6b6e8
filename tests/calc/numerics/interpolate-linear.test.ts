import { describe, expect, it } from "vitest";
import { interpolateLinear } from "@/lib/calc/numerics";

const read = (x: number): number =>
  interpolateLinear({
    quantity: "moisture",
    unit: "%",
    rows: [
      [0, 3],
      [2, 2],
      [6, 1],
    ],
    x,
  });

describe("interpolateLinear", () => {
  it("gives the rows back and the straight line between them", () => {
    expect([0, 2, 6, 1, 4].map(read)).toEqual([3, 2, 1, 2.5, 1.5]);
  });

  it("refuses to read past the ends", () => {
    expect(() => read(6.1)).toThrow("moisture 6.1 % is outside 0 to 6 %");
    expect(() => read(-1)).toThrow("moisture -1 % is outside 0 to 6 %");
  });

  it("takes a table of one row, and of two rows at one place the first", () => {
    const at = (rows: readonly (readonly [number, number])[], x: number): number =>
      interpolateLinear({ quantity: "moisture", unit: "%", rows, x });
    expect(at([[2, 5]], 2)).toBe(5);
    const step = [
      [0, 1],
      [2, 5],
      [2, 7],
      [4, 9],
    ] as const;
    expect([2, 3].map((x) => at(step, x))).toEqual([5, 8]);
  });

  it("refuses an empty table, rows out of order and what is not a number", () => {
    const at = (rows: readonly (readonly [number, number])[]): unknown =>
      interpolateLinear({ quantity: "moisture", unit: "%", rows, x: 2 });
    expect(() => at([])).toThrow("number of rows 0 is outside 1 to");
    const unsorted = [
      [0, 1],
      [-1, 2],
      [3, 4],
    ] as const;
    expect(() => at(unsorted)).toThrow("moisture of a row -1 % is outside 0 to 1e+300 %");
    expect(() =>
      at([
        [0, NaN],
        [3, 4],
      ]),
    ).toThrow("value of a row NaN is outside");
  });
});
