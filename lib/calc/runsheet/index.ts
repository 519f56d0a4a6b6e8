export type { CautionId, Step, StepAmount, StepName } from "./step";
