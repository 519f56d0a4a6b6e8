export {
  BREWS_RANGE,
  type BrewResult,
  type BrewsCompared,
  compareBrews,
  type ComparedAs,
  type ComparedResult,
} from "./brews";
export type { BrewGroup, GroupedBrews } from "./brews-groups";
export type { StrayBrew, StrayBrews } from "./brews-outliers";
export { compareTwoBrews, PAIR_LEVEL, type PairedResult, type PairedRow } from "./brews-pair";
export { type BrewPartition, partitionBrews, type UntoldFactor } from "./brews-partition";
export { CURVE_RANGE, type CurvePoint, thinCurve } from "./brews-thin-curve";
export type { BalanceTest } from "./balance-test";
export type { BrewFigureId } from "./brew-figures";
export { compareLedger, type LedgerComparison } from "./compare-ledger";
export type { ComparedRow } from "./compared-rows";
export { differenceCauses, type CauseId, type QuantityCauses } from "./difference-causes";
export type { DerivedQuantity } from "./derived-quantities";
export type { ExtractAccount, ExtractLine, ExtractLineId, RestsOn } from "./extract-account";
export type { FollowedReading } from "./followed-readings";
export type { ComparedReading } from "./latest-readings";
export { MEASURABLE, MEASURABLE_QUANTITIES, type MeasurableQuantity } from "./measurable";
export { meterEnergy, METER_READINGS_RANGE, type MeterEnergy, type MeterReading } from "./meter-energy";
export type { NextReading } from "./next-reading";
export type { LinearConstraint } from "./orthonormal-constraints";
export { reconcile, type ReconciledLedger } from "./reconcile";
export { RECONCILIATION_RANGE, reconcileLinear, type Reconciliation } from "./reconcile-linear";
export type { ReconciledQuantity } from "./reconciled-quantities";
export type { Suspect } from "./suspect";
