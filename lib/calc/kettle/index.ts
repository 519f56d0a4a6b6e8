export { boilOff, type BoilOff } from "./boil-off";
export { coolingShrinkage } from "./cooling-shrinkage";
export { FOAM_SHARE, KETTLE_RANGE, headspace, type Headspace } from "./headspace";
export { HOP_ABSORPTION, hopAbsorption } from "./hop-absorption";
export { hotBreakAndTrubLoss, type TrubLoss } from "./hot-break-and-trub-loss";
export { wortVolume } from "./wort-volume";
