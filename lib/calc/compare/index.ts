export { compareLedger, type LedgerComparison } from "./compare-ledger";
export type { ComparedRow } from "./compared-rows";
export type { DerivedQuantity } from "./derived-quantities";
export type { ExtractAccount, ExtractLine, ExtractLineId } from "./extract-account";
export type { ComparedReading } from "./latest-readings";
export { MEASURABLE, MEASURABLE_QUANTITIES, type MeasurableQuantity } from "./measurable";
export type { LinearConstraint } from "./orthonormal-constraints";
export { RECONCILIATION_RANGE, reconcileLinear, type Reconciliation } from "./reconcile-linear";
export type { Suspect } from "./suspect";
