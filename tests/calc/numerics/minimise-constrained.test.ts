import { describe, expect, it } from "vitest";
import { type ConstrainedProblem, leastSquares, minimiseConstrained } from "@/lib/calc/numerics";
import { HOCK_SCHITTKOWSKI } from "../../reference/hock-schittkowski";
import { LONGLEY, MISRA1A } from "../../reference/nist-strd";
import { expectDigits } from "../../support/expect-digits";
import { expectWithin } from "../../support/expect-within";

function minimum(problem: ConstrainedProblem): { readonly x: readonly number[]; readonly sumOfSquares: number } {
  const found = minimiseConstrained(problem);
  expect(found).toMatchObject({ ok: true });
  return found;
}

const adsorbed = ([most = 0, rate = 0]: readonly number[]): number[] =>
  MISRA1A.map(([y, x]) => most * (1 - Math.exp(-rate * x)) - y);

describe("minimiseConstrained", () => {
  it.each([
    [500, 0.0001],
    [250, 0.0005],
  ])("meets the certified fit of Misra1a from both starts (NIST StRD): %f, %f", (...start) => {
    const { x, sumOfSquares } = minimum({ residuals: adsorbed, start });
    expectDigits(x[0] ?? NaN, 2.3894212918e2, 8);
    expectDigits(x[1] ?? NaN, 5.5015643181e-4, 8);
    expectDigits(sumOfSquares, 1.2455138894e-1, 10);
  });

  it.each(HOCK_SCHITTKOWSKI)("comes to the printed minimum of problem $number of Hock and Schittkowski", (row) => {
    const { x, sumOfSquares } = minimum(row.problem);
    expectWithin(sumOfSquares, row.least, 5e-9);
    row.x.forEach((value, j) => expectWithin(x[j] ?? NaN, value, 1e-6));
    row.problem.constraints(x).forEach((left) => expectWithin(left, 0, 1e-8));
  });

  it("finds the point of the line x + y = 2 next to (3, 1), by hand: (2, 0)", () => {
    const found = minimiseConstrained({
      residuals: ([x = 0, y = 0]) => [x - 3, y - 1],
      constraints: ([x = 0, y = 0]) => [x + y - 2],
      start: [0, 0],
    });
    expect(found.ok).toBe(true);
    expectWithin(found.x[0] ?? NaN, 2, 1e-8);
    expectWithin(found.x[1] ?? NaN, 0, 1e-8);
    expectWithin(found.sumOfSquares, 2, 1e-8);
    expect(found.violation).toBeLessThan(1e-9);
    expect(found.iterations).toBeLessThan(10);
  });

  it("finds the point of the unit circle next to (3, 4), by hand: (3/5, 4/5)", () => {
    const { x, sumOfSquares } = minimum({
      residuals: ([a = 0, b = 0]) => [a - 3, b - 4],
      constraints: ([a = 0, b = 0]) => [a * a + b * b - 1],
      start: [1, 0.1],
    });
    expectWithin(x[0] ?? NaN, 0.6, 1e-8);
    expectWithin(x[1] ?? NaN, 0.8, 1e-8);
    expectWithin(sumOfSquares, 16, 1e-8);
  });

  it("agrees with linear least squares where everything is straight (a second method)", () => {
    const linear = leastSquares({
      rows: LONGLEY.map(([, a = 0, b = 0]) => [1, a, b]),
      values: LONGLEY.map(([y = 0]) => y),
    });
    if (!linear.ok) throw new Error(linear.reason);
    const { x } = minimum({
      residuals: ([c = 0, p = 0, q = 0]) => LONGLEY.map(([y = 0, a = 0, b = 0]) => c + p * a + q * b - y),
      start: [1e4, 100, 0.1],
    });
    linear.coefficients.forEach((value, j) => expectDigits(x[j] ?? NaN, value, 6));
  });

  it("follows the bent valley of Rosenbrock to (1, 1)", () => {
    const { x } = minimum({ residuals: ([a = 0, b = 0]) => [10 * (b - a * a), 1 - a], start: [-1.2, 1] });
    expectWithin(x[0] ?? NaN, 1, 1e-7);
    expectWithin(x[1] ?? NaN, 1, 1e-7);
  });

  it("stops at a bound, by hand: in the same valley with x up to 1/2 the least is 1/4 at (1/2, 1/4)", () => {
    const { x, sumOfSquares } = minimum({
      residuals: ([a = 0, b = 0]) => [10 * (b - a * a), 1 - a],
      start: [-1.2, 1],
      bounds: [
        { min: -2, max: 0.5 },
        { min: -1, max: 2 },
      ],
    });
    expect(x[0]).toBe(0.5);
    expectWithin(x[1] ?? NaN, 0.25, 1e-8);
    expectWithin(sumOfSquares, 0.25, 1e-8);
  });

  it("keeps bounds and a constraint at once, by hand: x + y = 4 with x up to 1.5, next to (5, 5), is (1.5, 2.5)", () => {
    const { x } = minimum({
      residuals: ([a = 0, b = 0]) => [a - 5, b - 5],
      constraints: ([a = 0, b = 0]) => [a + b - 4],
      start: [1, 1],
      bounds: [
        { min: 0, max: 1.5 },
        { min: 0, max: 9 },
      ],
    });
    expect(x[0]).toBe(1.5);
    expectWithin(x[1] ?? NaN, 2.5, 1e-8);
  });

  it("leaves a bound again that it only touched on the way", () => {
    const { x } = minimum({
      residuals: ([a = 0, b = 0]) => [a - 1, 5 * (b - a * a)],
      start: [0, 3],
      bounds: [
        { min: 0, max: 4 },
        { min: 0, max: 4 },
      ],
      scale: [1, 1],
    });
    expectWithin(x[0] ?? NaN, 1, 1e-7);
    expectWithin(x[1] ?? NaN, 1, 1e-7);
  });

  it("takes a constraint that is said twice", () => {
    const { x } = minimum({
      residuals: (point) => point,
      constraints: ([a = 0, b = 0]) => [a + b - 1, 2 * a + 2 * b - 2],
      start: [1, 1],
    });
    x.forEach((value) => expectWithin(value, 0.5, 1e-8));
  });

  it("says when constraints cannot be met, and how far off they stay", () => {
    const never = minimiseConstrained({ residuals: (x) => x, constraints: ([a = 0]) => [a * a + 1], start: [1] });
    expect(never).toMatchObject({ ok: false, reason: "constraints-not-met" });
    expectWithin(never.violation, 1, 1e-6);
    const contrary = minimiseConstrained({
      residuals: (x) => x,
      constraints: ([a = 0, b = 0]) => [a + b - 1, a + b - 2],
      start: [1, 1],
    });
    expect(contrary).toMatchObject({ ok: false, reason: "constraints-not-met" });
    const outOfReach = minimiseConstrained({
      residuals: (x) => x,
      constraints: ([a = 0]) => [a - 3],
      start: [0.5],
      bounds: [{ min: 0, max: 1 }],
    });
    expect(outOfReach).toMatchObject({ ok: false, reason: "constraints-not-met", x: [1], violation: 2 });
  });

  it("says when a function is not finite at the start or beside it", () => {
    const start = minimiseConstrained({ residuals: ([x = 0]) => [Math.sqrt(x)], start: [-1] });
    expect(start).toEqual({
      ok: false,
      reason: "not-finite",
      x: [-1],
      sumOfSquares: Number.MAX_VALUE,
      violation: 0,
      iterations: 0,
    });
    const edge = minimiseConstrained({ residuals: ([x = 0]) => [Math.log(x) + 5 + 0 * Math.sqrt(1 - x)], start: [1] });
    expect(edge).toMatchObject({ ok: false, reason: "not-finite", x: [1], iterations: 1 });
  });

  it("says when the minimum lies at infinity", () => {
    const away = minimiseConstrained({ residuals: ([x = 0]) => [Math.exp(-x)], start: [1] });
    expect(away).toMatchObject({ ok: false, reason: "did-not-converge", iterations: 300 });
    expect(away.sumOfSquares).toBeLessThan(1e-12);
  });

  it("refuses starts, bounds and scales that are not numbers or do not fit", () => {
    const residuals = (x: readonly number[]): readonly number[] => x;
    const bound = { min: 0, max: 1 };
    expect(() => minimiseConstrained({ residuals, start: [] })).toThrow("number of unknowns 0 is outside 1 to 100");
    expect(() => minimiseConstrained({ residuals, start: [NaN] })).toThrow("start NaN is outside -1e+60 to 1e+60");
    expect(() => minimiseConstrained({ residuals, start: [2], bounds: [bound] })).toThrow("start 2 is outside 0 to 1");
    expect(() => minimiseConstrained({ residuals, start: [0.5], bounds: [bound, bound] })).toThrow(
      "number of bounds 2",
    );
    expect(() => minimiseConstrained({ residuals, start: [0.5], bounds: [{ min: 1, max: 0 }] })).toThrow(
      "upper bound 0",
    );
    expect(() => minimiseConstrained({ residuals, start: [0.5], bounds: [{ min: NaN, max: 0 }] })).toThrow(
      "lower bound NaN",
    );
    expect(() => minimiseConstrained({ residuals, start: [1], scale: [1, 2] })).toThrow(
      "number of scales 2 is outside 1",
    );
    expect(() => minimiseConstrained({ residuals, start: [1], scale: [0] })).toThrow(
      "scale 0 is outside 1e-30 to 1e+30",
    );
  });
});
