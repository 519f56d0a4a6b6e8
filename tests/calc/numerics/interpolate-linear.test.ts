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
});
