export { BED_LAYERS, PORTIONS_RANGE, runOff, type RunOff, type Sparge } from "./run-off";
