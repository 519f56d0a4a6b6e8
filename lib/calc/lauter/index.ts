export { runOff, type RunOff, type Sparge } from "./run-off";
