export { ROOT_TOLERANCE_RANGE, findRoot, type Root } from "./find-root";
export { ODE_TOLERANCE_RANGE, integrateOde, type OdeOutcome, type OdeProblem, type Slopes } from "./integrate-ode";
export { interpolateLinear } from "./interpolate-linear";
