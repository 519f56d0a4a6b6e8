export { boilOff, type BoilOff } from "./boil-off";
export { coolingShrinkage } from "./cooling-shrinkage";
export {
  DIP_STICK_RANGE,
  type DipStickMark,
  type DipStickTable,
  type DipStickUnit,
  type DipStickVolume,
  dipStickVolume,
} from "./dip-stick-volume";
export { FOAM_SHARE, KETTLE_RANGE, headspace, type Headspace } from "./headspace";
export { HOP_ABSORPTION, hopAbsorption } from "./hop-absorption";
export { hotBreakAndTrubLoss, type TrubLoss } from "./hot-break-and-trub-loss";
export { LINEAR_EXPANSION, type VesselMaterial } from "./vessel-expansion";
export { volumeAtReference } from "./volume-at-reference";
export { wortVolume } from "./wort-volume";
