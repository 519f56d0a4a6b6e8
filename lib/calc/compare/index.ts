export { RECONCILIATION_RANGE, reconcileLinear, type Reconciliation } from "./reconcile-linear";
export type { LinearConstraint } from "./orthonormal-constraints";
