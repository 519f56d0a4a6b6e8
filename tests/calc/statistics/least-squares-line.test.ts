import { describe, expect, it } from "vitest";
import { leastSquaresLine } from "@/lib/calc/statistics";
import { NORRIS } from "../../reference/nist-strd";
import { expectDigits } from "../../support/expect-digits";
import { expectWithin } from "../../support/expect-within";

describe("leastSquaresLine", () => {
  it("meets the certified line of Norris to twelve digits (NIST StRD)", () => {
    const line = leastSquaresLine(NORRIS);
    expectDigits(line.intercept, -0.262323073774029, 12);
    expectDigits(line.slope, 1.00211681802045, 14);
    expectDigits(line.interceptError, 0.232818234301152, 12);
    expectDigits(line.slopeError, 0.429796848199937e-3, 12);
    expectDigits(line.residualSd, 0.884796396144373, 12);
    expectDigits(line.rSquared, 0.999993745883712, 14);
  });

  it("fits three points by hand: (0, 1), (1, 3), (2, 4)", () => {
    // Slope 3/2, mean of y 8/3, so intercept 7/6; residuals −1/6, 1/3, −1/6 with a sum of squares of 1/6 on one degree of freedom.
    const line = leastSquaresLine([
      [0, 1],
      [1, 3],
      [2, 4],
    ]);
    expectWithin(line.slope, 1.5, 1e-15);
    expectWithin(line.intercept, 7 / 6, 1e-15);
    expectWithin(line.residualSd, Math.sqrt(1 / 6), 1e-15);
    expectWithin(line.slopeError, Math.sqrt(1 / 12), 1e-15);
    expectWithin(line.interceptError, Math.sqrt((1 / 6) * (1 / 3 + 1 / 2)), 1e-15);
    expectWithin(line.rSquared, 27 / 28, 1e-15);
  });

  it("gives a straight line back without error, far from the origin too", () => {
    const line = leastSquaresLine([1e9, 1e9 + 1, 1e9 + 2, 1e9 + 5].map((x) => [x, 3 * x - 7]));
    expect(line).toMatchObject({ slope: 3, slopeError: 0, residualSd: 0, rSquared: 1 });
    expectWithin(line.intercept, -7, 1e-6);
  });

  it("explains nothing where y does not vary", () => {
    const line = leastSquaresLine([
      [1, 5],
      [2, 5],
      [4, 5],
    ]);
    expect(line).toEqual({ slope: 0, intercept: 5, slopeError: 0, interceptError: 0, residualSd: 0, rSquared: 0 });
  });

  it("moves with its data: a shift of y moves the intercept, a stretch of x divides the slope", () => {
    const base = leastSquaresLine(NORRIS);
    const moved = leastSquaresLine(NORRIS.map(([x, y]) => [2 * x, y + 8]));
    expectWithin(moved.slope, base.slope / 2, 1e-14);
    expectWithin(moved.intercept, base.intercept + 8, 1e-11);
    expectWithin(moved.residualSd, base.residualSd, 1e-12);
  });

  it("refuses two points, points above one another and what is not a number", () => {
    expect(() =>
      leastSquaresLine([
        [0, 1],
        [1, 2],
      ]),
    ).toThrow("number of points 2 is outside 3 to 100000");
    expect(() =>
      leastSquaresLine([
        [2, 1],
        [2, 2],
        [2, 3],
      ]),
    ).toThrow("sum of squares of x 0 is outside 1e-80");
    expect(() =>
      leastSquaresLine([
        [NaN, 1],
        [1, 2],
        [2, 3],
      ]),
    ).toThrow("x NaN is outside -1e+50 to 1e+50");
    expect(() =>
      leastSquaresLine([
        [0, 1],
        [1, Infinity],
        [2, 3],
      ]),
    ).toThrow("y Infinity is outside -1e+50 to 1e+50");
  });
});
