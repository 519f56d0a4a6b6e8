export { adapt, type AdaptOutcome, type Hold, type Residuals } from "./adapt";
export {
  WAY_OUT_KINDS,
  type Intention,
  type IntendedFermentable,
  type IntendedHop,
  type WayOut,
  type WayOutKind,
} from "./intention";
export { intentionOf } from "./intention-of";
export { substitute } from "./substitute";
export type {
  FermentableStock,
  HopStock,
  Lacking,
  LedgerChange,
  Substitute,
  SubstituteInput,
  SubstituteOutcome,
  Unfit,
  UnfitReason,
  Unlikeness,
} from "./substitution";
