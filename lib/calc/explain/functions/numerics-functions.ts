import {
  findRoot,
  integrateOde,
  interpolateLinear,
  leastSquares,
  LINEAR_RANGE,
  MINIMISE_RANGE,
  minimiseConstrained,
  ODE_TOLERANCE_RANGE,
  QUASI_RANDOM_RANGE,
  quasiRandom,
  ROOT_TOLERANCE_RANGE,
  solveLinear,
} from "../../numerics";
import type { FunctionInput, FunctionRecord } from "./function-record";

const FINITE = { unit: "", min: -1e300, max: 1e300 } as const;

const entry = (at: string, label: string): FunctionInput => ({ at, label, ...LINEAR_RANGE.entry });

/** Moisture of a malt and its heat capacity: the table of the example. */
const TABLE = [
  [0, 3],
  [2, 2],
  [6, 1],
];

/** Extract fermented after 1, 2, 3 and 5 days. */
const DAYS = [1, 2, 3, 5];

/** How the numerical methods under the other functions are explained. */
export const NUMERICS_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "numerics/findRoot",
    words:
      "Where a function passes through nothing between two points at which it has opposite signs. Brent's method: a curve through three points while that helps, halving when it does not, so the bracket never widens. It says when the ends do not bracket a root and when 200 evaluations did not settle it. Of several roots it finds one.",
    equation: "f(x) = 0 with f(low) · f(high) < 0",
    inputs: [
      { at: "0.low", label: "Lower end", ...FINITE, max: 3 },
      { at: "0.high", label: "Upper end", ...FINITE, min: 2 },
      { at: "0.tolerance", label: "Distance from the root that is allowed", ...ROOT_TOLERANCE_RANGE },
    ],
    gives: "root and number of evaluations; or the best point and why there is no root",
    sources: ["brent-1973"],
    validRange: "Finite ends in their order, and a function without gaps between them.",
    call: findRoot,
    // Wallis's cubic, on which Newton showed his own method.
    example: [{ f: (x: number) => x ** 3 - 2 * x - 5, low: 2, high: 3, tolerance: 1e-12 }],
  },
  {
    id: "numerics/integrateOde",
    words:
      "What becomes of quantities whose rates of change are known: heating, boiling, fermenting. Runge and Kutta's method in the pair of Dormand and Prince, with steps as long as the error asked for allows, and an end where a condition is met. Not for systems in which something very fast follows something slow: those end in too many steps.",
    equation: "y′ = f(t, y), steps of fifth order held to a fourth-order comparison",
    inputs: [
      { at: "0.from", label: "Start of the span", ...FINITE },
      { at: "0.to", label: "End of the span", ...FINITE },
      { at: "0.start.0", label: "Value at the start", ...FINITE },
      { at: "0.relative", label: "Error allowed, as a share", ...ODE_TOLERANCE_RANGE },
      { at: "0.absolute", label: "Error allowed near zero", unit: "", min: 0, max: 1e300 },
    ],
    gives: "where it ended, and the values there; or how far it came and why it stopped",
    sources: ["dormand-prince-1980", "hairer-1993"],
    validRange: "Finite span and start, relative error 1e-14 to 0.1, at most 100 000 steps.",
    call: integrateOde,
    example: [
      {
        slopes: (_t: number, y: Float64Array, slopes: Float64Array): void => {
          slopes[0] = -(y[0] ?? 0);
        },
        from: 0,
        to: 1,
        start: [1],
        relative: 1e-9,
        absolute: 1e-12,
      },
    ],
  },
  {
    id: "numerics/interpolateLinear",
    words:
      "A table read between its rows along straight lines. The table is not continued past its ends: what nobody measured is refused.",
    equation: "y = y₁ + (y₂ − y₁) (x − x₁) / (x₂ − x₁)",
    inputs: [{ at: "0.x", label: "Where to read", unit: "%", min: 0, max: 6 }],
    gives: "value at that place",
    sources: ["abramowitz-stegun-1964"],
    validRange: "From the first to the last row.",
    call: interpolateLinear,
    example: [{ quantity: "moisture", unit: "%", rows: TABLE, x: 1 }],
  },
  {
    id: "numerics/solveLinear",
    words:
      "As many linear equations as unknowns, by elimination with the largest pivot. The residual is taken with twice the digits and corrects the answer, so that it is right to the last digits unless the equations nearly depend on one another. Where they do depend, it says how many are left.",
    equation: "A x = b, P A = L U, then x ← x + (L U)⁻¹ P (b − A x)",
    inputs: [entry("0.matrix.0.0", "Coefficient"), entry("0.rhs.0", "Right-hand side")],
    gives: "the unknowns; or that the equations are singular, and how many are independent",
    sources: ["golub-van-loan-2013"],
    validRange: "1 to 200 equations.",
    call: solveLinear,
    example: [
      {
        matrix: [
          [2, 1],
          [1, 3],
        ],
        rhs: [3, 5],
      },
    ],
  },
  {
    id: "numerics/leastSquares",
    words:
      "Coefficients of regressors from more values than there are unknowns, so that the weighted squares of what is left over are least. By reflections rather than normal equations, then refined. It holds the certified digits of NIST's reference data; of a tenth-degree polynomial only seven, because its powers are rounded before it sees them. Errors assume independent scatter.",
    equation: "min Σ w (y − X b)²; covariance s² (Xᵀ W X)⁻¹, s² = Σ w r² / (n − k)",
    inputs: [
      entry("0.rows.0.1", "Regressor"),
      entry("0.values.0", "Value"),
      { at: "0.weights.0", label: "Weight of a value", ...LINEAR_RANGE.weight },
    ],
    gives: "coefficients, their errors and covariance, residual sd; or that regressors depend on one another",
    sources: ["bjorck-1967", "golub-van-loan-2013", "nist-strd"],
    validRange: "1 to 200 unknowns, more values than unknowns, up to 20 000 values.",
    call: leastSquares,
    example: [{ rows: DAYS.map((day) => [1, day]), values: [2.1, 3.9, 6.2, 9.8], weights: [1, 1, 1, 2] }],
  },
  {
    id: "numerics/minimiseConstrained",
    words:
      "The point where squared residuals are least while some functions stay at nothing and unknowns within bounds. Steps of Gauss and Newton, damped as Levenberg and Marquardt do while a step does not help, with the bend of the constraints taken in. It finds the minimum that the start leads to, says how it ended, and does not claim to have met what cannot be met.",
    equation: "min Σ r(x)² with c(x) = 0, min ≤ x ≤ max: [H Cᵀ; C 0] [d; λ] = −[Jᵀ r; c], H = Jᵀ J + Σ λ ∇²c + damping",
    inputs: [
      { at: "0.start.0", label: "Start of an unknown", ...MINIMISE_RANGE.start },
      { at: "0.scale.0", label: "Size of an unknown", ...MINIMISE_RANGE.scale },
    ],
    gives: "the point, its sum of squares, the largest constraint left and how it ended",
    sources: ["marquardt-1963", "nocedal-wright-2006", "nist-strd"],
    validRange: "1 to 100 unknowns, functions without kinks on the way from the start.",
    call: minimiseConstrained,
    // The point of the line x + y = 2 next to (3, 1).
    example: [
      {
        residuals: ([x = 0, y = 0]: readonly number[]) => [x - 3, y - 1],
        constraints: ([x = 0, y = 0]: readonly number[]) => [x + y - 2],
        start: [0, 0],
        scale: [1, 1],
      },
    ],
  },
  {
    id: "numerics/quasiRandom",
    words:
      "Points that fill a cube more evenly than chance: each coordinate moves on by the square root of its own prime and keeps the fraction, from a start that the seed chooses. Means over them settle about as 1/n instead of 1/√n. With many coordinates and few points the advantage goes.",
    equation: "x(i, j) = fraction of (start(seed, j) + i √prime(j))",
    inputs: [
      { at: "0.dimension", label: "Coordinates of a point", ...QUASI_RANDOM_RANGE.dimension },
      { at: "0.count", label: "Number of points", ...QUASI_RANDOM_RANGE.count },
      { at: "0.seed", label: "Seed", ...QUASI_RANDOM_RANGE.seed },
    ],
    gives: "points, coordinates between 0 and 1",
    sources: ["niederreiter-1992"],
    validRange: "1 to 40 coordinates, up to 100 000 points.",
    call: quasiRandom,
    example: [{ dimension: 2, count: 4, seed: 1 }],
  },
];
