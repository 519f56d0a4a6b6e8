export { ROOT_TOLERANCE_RANGE, findRoot, type Root } from "./find-root";
export { ODE_TOLERANCE_RANGE, integrateOde, type OdeOutcome, type OdeProblem, type Slopes } from "./integrate-ode";
export { interpolateLinear } from "./interpolate-linear";
export { leastSquares, type LeastSquaresFit, type LeastSquaresProblem } from "./least-squares";
export { LINEAR_RANGE } from "./linear-ranges";
export { type LinearSolution, solveLinear } from "./solve-linear";
export {
  type ConstrainedMinimum,
  type ConstrainedProblem,
  MINIMISE_RANGE,
  minimiseConstrained,
} from "./minimise-constrained";
export { QUASI_RANDOM_RANGE, quasiRandom } from "./quasi-random";
