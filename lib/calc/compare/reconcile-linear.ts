import { requireInRange } from "../errors";
import { chiSquaredUpperTail } from "../statistics";
import { orthonormalConstraints, type LinearConstraint } from "./orthonormal-constraints";

export const RECONCILIATION_RANGE = {
  value: { unit: "", min: -1e12, max: 1e12 },
  sigma: { unit: "", min: 1e-12, max: 1e12 },
} as const;

/** A reading whose balances leave it no room to move has no adjustment to judge. */
const NOT_CHECKED = 1e-9;

export interface Reconciliation {
  readonly reconciled: readonly number[];
  /** Standard uncertainty of each reconciled value; never more than that of the measured one. */
  readonly reconciledSigma: readonly number[];
  readonly chiSquared: number;
  /** Independent balances. */
  readonly df: number;
  /** How probable so large a sum of squares is when every uncertainty is as stated. */
  readonly p: number;
  /** Adjustment over its own standard uncertainty; 0 where no balance checks the value. The largest names the suspect. */
  readonly z: readonly number[];
}

/**
 * Adjusts measured values as little as their uncertainties ask so that linear balances hold exactly.
 *
 * Minimises Σ((x − y)/σ)² subject to A·x = b. With the balances made orthonormal in u = (x − y)/σ the least adjustment
 * is the sum of their rows, each times its own imbalance.
 *
 * @param a.measured - Measured values y.
 * @param a.sigma - Their standard uncertainties σ, independent of each other.
 * @param a.constraints - Balances; those that follow from others are left out.
 * @returns Reconciled values and uncertainties, the global test and the measurement test (reconciled − measured).
 * @validRange Uncertainties above 1e-12, finite values.
 * @throws {@link OutOfRangeError} when a value is not finite, an uncertainty not positive, the lengths differ, or two
 * balances contradict each other.
 * @source Narasimhan and Jordache 2000, chapters 3 and 7 (docs/sources.md#narasimhan-jordache-2000)
 * @example
 * // Two scales under one sack: 10 and 12 kg, equally good.
 * reconcileLinear({ measured: [10, 12], sigma: [1, 1], constraints: [{ coefficients: [1, -1], equals: 0 }] }).reconciled; // [11, 11]
 */
export function reconcileLinear(a: {
  readonly measured: readonly number[];
  readonly sigma: readonly number[];
  readonly constraints: readonly LinearConstraint[];
}): Reconciliation {
  const { measured, sigma, constraints } = a;
  requireShape(a);
  const balances = orthonormalConstraints(constraints, measured, sigma);
  const chiSquared = balances.reduce((sum, { right }) => sum + right * right, 0);
  const df = balances.length;
  const adjusted = measured.map((value, i) => {
    const own = sigma[i] ?? 0;
    const moved = balances.reduce((sum, { row, right }) => sum + (row[i] ?? 0) * right, 0);
    // Share of the variance that the balances take away.
    const checked = Math.min(
      1,
      balances.reduce((sum, { row }) => sum + (row[i] ?? 0) ** 2, 0),
    );
    return {
      value: value + own * moved,
      sigma: own * Math.sqrt(1 - checked),
      z: checked > NOT_CHECKED ? moved / Math.sqrt(checked) : 0,
    };
  });
  return {
    reconciled: adjusted.map((each) => each.value),
    reconciledSigma: adjusted.map((each) => each.sigma),
    chiSquared,
    df,
    p: df === 0 ? 1 : chiSquaredUpperTail({ chiSquared: Math.min(chiSquared, 1e6), df }),
    z: adjusted.map((each) => each.z),
  };
}

function requireShape({ measured, sigma, constraints }: Parameters<typeof reconcileLinear>[0]): void {
  const length = { unit: "", min: measured.length, max: measured.length };
  requireInRange("number of uncertainties", sigma.length, length);
  for (const value of measured) requireInRange("measured value", value, RECONCILIATION_RANGE.value);
  for (const value of sigma) requireInRange("uncertainty", value, RECONCILIATION_RANGE.sigma);
  for (const { coefficients, equals } of constraints) {
    requireInRange("number of coefficients", coefficients.length, length);
    requireInRange("right side of a balance", equals, RECONCILIATION_RANGE.value);
    for (const value of coefficients) requireInRange("coefficient", value, RECONCILIATION_RANGE.value);
  }
}
