export { buildRunSheet } from "./build-run-sheet";
export { CAUTIONS } from "./cautions";
export type { CautionId, Step, StepAmount, StepName } from "./step";
export { SPREAD_RANGE, USUAL_SPREAD } from "./pace";
export type {
  ExpectedTime,
  MissedAddition,
  RampReading,
  Replan,
  ReplannedStep,
  Spread,
  StepRecord,
  StepState,
} from "./replan";
export { replanRunSheet } from "./replan-run-sheet";
