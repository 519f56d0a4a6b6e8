export { adapt, type AdaptOutcome, type Hold, type Residuals } from "./adapt";
export type { Intention, IntendedFermentable, IntendedHop, WayOut, WayOutKind } from "./intention";
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
