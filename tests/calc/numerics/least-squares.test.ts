import { describe, expect, it } from "vitest";
import { leastSquares, type LeastSquaresProblem } from "@/lib/calc/numerics";
import { FILIP, LONGLEY, NORRIS, PONTIUS } from "../../reference/nist-strd";
import { expectDigits } from "../../support/expect-digits";
import { expectWithin } from "../../support/expect-within";

function fit(problem: LeastSquaresProblem): Extract<ReturnType<typeof leastSquares>, { ok: true }> {
  const result = leastSquares(problem);
  if (!result.ok) throw new Error(result.reason);
  return result;
}

const powers = (x: number, degree: number): number[] => Array.from({ length: degree + 1 }, (_, k) => x ** k);
const LOADS = Array.from({ length: 40 }, (_, i) => 150_000 * ((i % 20) + 1));

interface Certified {
  readonly name: string;
  readonly problem: LeastSquaresProblem;
  readonly coefficients: readonly number[];
  readonly errors: readonly number[];
  readonly residualSd: number;
  readonly df: number;
  readonly digits: number;
}

/**
 * NIST StRD, linear regression. The tenth powers of Filip do not fit a double: that rounding alone, before any solver sees the
 * numbers, leaves between seven and eight digits.
 */
const CERTIFIED: readonly Certified[] = [
  {
    name: "Norris",
    problem: { rows: NORRIS.map(([x]) => [1, x]), values: NORRIS.map(([, y]) => y) },
    coefficients: [-0.262323073774029, 1.00211681802045],
    errors: [0.232818234301152, 0.429796848199937e-3],
    residualSd: 0.884796396144373,
    df: 34,
    digits: 13,
  },
  {
    name: "NoInt1",
    problem: {
      rows: Array.from({ length: 11 }, (_, i) => [60 + i]),
      values: Array.from({ length: 11 }, (_, i) => 130 + i),
    },
    coefficients: [2.07438016528926],
    errors: [0.165289256198347e-1],
    residualSd: 3.56753034006338,
    df: 10,
    digits: 14,
  },
  {
    name: "Pontius",
    problem: { rows: LOADS.map((x) => [1, x, x * x]), values: PONTIUS.flat() },
    coefficients: [0.673565789473684e-3, 0.732059160401003e-6, -0.316081871345029e-14],
    errors: [0.107938612033077e-3, 0.157817399981659e-9, 0.486652849992036e-16],
    residualSd: 0.205177424076185e-3,
    df: 37,
    digits: 12,
  },
  {
    name: "Longley",
    problem: { rows: LONGLEY.map(([, ...x]) => [1, ...x]), values: LONGLEY.map(([y = NaN]) => y) },
    coefficients: [
      -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359,
      -0.0511041056535807, 1829.15146461355,
    ],
    errors: [
      890420.383607373, 84.9149257747669, 0.0334910077722432, 0.488399681651699, 0.214274163161675, 0.22607320006937,
      455.478499142212,
    ],
    residualSd: 304.854073561965,
    df: 9,
    digits: 13,
  },
  {
    name: "Filip",
    problem: { rows: FILIP.map(([, x]) => powers(x, 10)), values: FILIP.map(([y]) => y) },
    coefficients: [
      -1467.4896142298, -2772.17959193342, -2316.37108160893, -1127.97394098372, -354.478233703349, -75.1242017393757,
      -10.8753180355343, -1.06221498588947, -0.0670191154593408, -0.00246781078275479, -0.0000402962525080404,
    ],
    errors: [
      298.084530995537, 559.77986547495, 466.477572127796, 227.204274477751, 71.6478660875927, 15.28971787474,
      2.23691159816033, 0.221624321934227, 0.0142363763154724, 0.000535617408889821, 0.00000896632837373868,
    ],
    residualSd: 0.00334801051324544,
    df: 71,
    digits: 7,
  },
];

describe("leastSquares", () => {
  it.each(CERTIFIED)("meets the certified values of $name to $digits digits (NIST StRD)", (row) => {
    const result = fit(row.problem);
    row.coefficients.forEach((value, j) => expectDigits(result.coefficients[j] ?? NaN, value, row.digits));
    row.errors.forEach((value, j) => expectDigits(result.standardErrors[j] ?? NaN, value, row.digits));
    expectDigits(result.residualSd, row.residualSd, row.digits);
    expectDigits(result.residualSquares, row.residualSd ** 2 * row.df, row.digits);
    expect(result.df).toBe(row.df);
  });

  it("fits three points by hand: 1, 3 and 4 at 0, 1 and 2", () => {
    // As in the straight line: 7/6 + 3/2 x, residual variance 1/6; (XᵀX)⁻¹ = [[5/6, −1/2], [−1/2, 1/2]].
    const result = fit({
      rows: [
        [1, 0],
        [1, 1],
        [1, 2],
      ],
      values: [1, 3, 4],
    });
    [7 / 6, 3 / 2].forEach((value, j) => expectWithin(result.coefficients[j] ?? NaN, value, 1e-15));
    const covariance = [
      [5 / 36, -1 / 12],
      [-1 / 12, 1 / 12],
    ];
    covariance.forEach((line, i) =>
      line.forEach((value, j) => expectWithin(result.covariance[i]?.[j] ?? NaN, value, 1e-15)),
    );
  });

  it("weighs: a weight of 2 is the same value twice, but for the degrees of freedom", () => {
    const once = [
      { x: 0, y: 1 },
      { x: 1, y: 3 },
      { x: 2, y: 4 },
      { x: 5, y: 6 },
    ];
    const weighted = fit({ rows: once.map(({ x }) => [1, x]), values: once.map(({ y }) => y), weights: [1, 2, 1, 1] });
    const twice = [...once, { x: 1, y: 3 }];
    const doubled = fit({ rows: twice.map(({ x }) => [1, x]), values: twice.map(({ y }) => y) });
    weighted.coefficients.forEach((value, j) => expectWithin(value, doubled.coefficients[j] ?? NaN, 1e-14));
    expectWithin(weighted.residualSquares, doubled.residualSquares, 1e-14);
    expect([weighted.df, doubled.df]).toEqual([2, 3]);
  });

  it("does not care for the order of the regressors or their size", () => {
    const base = fit(CERTIFIED[3]?.problem ?? { rows: [], values: [] });
    const turned = fit({
      rows: LONGLEY.map(([, ...x]) => [...x.map((entry) => entry * 1e40).reverse(), 1]),
      values: LONGLEY.map(([y = NaN]) => y),
    });
    expectDigits((turned.coefficients[0] ?? NaN) * 1e40, base.coefficients[6] ?? NaN, 12);
    expectDigits((turned.standardErrors[5] ?? NaN) * 1e40, base.standardErrors[1] ?? NaN, 12);
  });

  it("says how many regressors are independent", () => {
    const values = [1, 2, 3, 4];
    expect(leastSquares({ rows: [1, 2, 3, 5].map((x) => [1, x, 3 - 2 * x]), values })).toEqual({
      ok: false,
      reason: "rank-deficient",
      rank: 2,
    });
    expect(leastSquares({ rows: [1, 2, 3, 5].map((x) => [x, 0]), values })).toEqual({
      ok: false,
      reason: "rank-deficient",
      rank: 1,
    });
  });

  it("says when no value is left over to tell an error by", () => {
    expect(
      leastSquares({
        rows: [
          [1, 2],
          [1, 3],
        ],
        values: [1, 2],
      }),
    ).toEqual({ ok: false, reason: "too-few-values", rank: 2 });
    expect(leastSquares({ rows: [[1, 2, 3]], values: [1] })).toEqual({ ok: false, reason: "too-few-values", rank: 1 });
  });

  it("refuses rows, values and weights that do not fit", () => {
    const rows = [[1], [2], [3]];
    const values = [1, 2, 3];
    expect(() => leastSquares({ rows: [], values: [] })).toThrow("number of values 0 is outside 1 to 20000");
    expect(() => leastSquares({ rows: [[], []], values: [1, 2] })).toThrow("number of unknowns 0 is outside 1 to 200");
    expect(() => leastSquares({ rows: [[1], [1, 2], [1]], values })).toThrow("length of a row 2 is outside 1 to 1");
    expect(() => leastSquares({ rows, values: [1, 2] })).toThrow("number of values 2 is outside 3 to 3");
    expect(() => leastSquares({ rows, values, weights: [1] })).toThrow("number of weights 1 is outside 3 to 3");
    expect(() => leastSquares({ rows, values, weights: [1, 0, 1] })).toThrow("weight 0 is outside 1e-30 to 1e+30");
    expect(() => leastSquares({ rows, values: [1, NaN, 3] })).toThrow("value NaN is outside -1e+60 to 1e+60");
    expect(() => leastSquares({ rows: [[1], [Infinity], [1]], values })).toThrow("entry Infinity is outside");
  });
});
