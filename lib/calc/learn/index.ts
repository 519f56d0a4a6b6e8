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
export { READING_SD_RANGE, TRIAL_RANGE, type Estimate, type Stated } from "./estimate";
export type { Scatter } from "./fit-trial";
export { WATER_RANGE, type HeatingRun, type TimedTemperature } from "./heating-run";
export type { MoreNeeded } from "./what-would-tell";
