export { buildRunSheet } from "./build-run-sheet";
export { CAUTIONS } from "./cautions";
export type { CautionId, Step, StepAmount, StepName } from "./step";
