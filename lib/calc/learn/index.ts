export { brewEvidence, type BrewEvidence, type BrewEvidenceOutcome } from "./brew-evidence";
export { calibrate, CALIBRATION_RANGE, type BrewFit, type Calibration } from "./calibrate";
export type { ChillRun, ChillTrialInput } from "./chill-run";
export { commissionBoilOff, type BoilOffRun, type BoilOffTrial, type TimedVolume } from "./commission-boil-off";
export { commissionChill, type ChillTrial } from "./commission-chill";
export { commissionCounterflow, type CounterflowRun, type CounterflowTrial } from "./commission-counterflow";
export { commissionDeadSpace, type DeadSpaceTrial, type LeftBehind } from "./commission-dead-space";
export {
  commissionHeating,
  type HeatingFigures,
  type HeatingTrial,
  type HeatingTrialInput,
} from "./commission-heating";
export { dipStick, type DipStick, type Pour } from "./dip-stick";
export { driftTest, DRIFT_RANGE, type Drift } from "./drift-test";
export { READING_SD_RANGE, TRIAL_RANGE, type Estimate, type Stated } from "./estimate";
export type { Scatter } from "./fit-trial";
export { WATER_RANGE, type HeatingRun, type TimedTemperature } from "./heating-run";
export type { KindFigure } from "./kind-figures";
export type { FigureTrend, LearnedFigure } from "./learned-figure";
export type { KettleOfKind } from "./own-information";
export { pool, POOL_RANGE, type Pool } from "./pool";
export type { PooledFigure, PooledProfile } from "./pooled-profile";
export type { MoreNeeded } from "./what-would-tell";
