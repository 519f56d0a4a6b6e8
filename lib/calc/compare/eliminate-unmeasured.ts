import type { LinearConstraint } from "./orthonormal-constraints";

/** A coefficient this small against the others of its column is rounding. */
const NOTHING = 1e-10;

/**
 * Combines balances so that what was not measured drops out of them.
 *
 * Each unmeasured value uses up the balance in which it weighs most; what remains ties measured values only.
 *
 * @param constraints - Balances over all values.
 * @param isMeasured - For each value, whether it was measured.
 * @returns Balances over the measured values alone, in their order.
 * @source Narasimhan and Jordache 2000, chapter 3, unmeasured variables (docs/sources.md#narasimhan-jordache-2000)
 */
export function eliminateUnmeasured(
  constraints: readonly LinearConstraint[],
  isMeasured: readonly boolean[],
): LinearConstraint[] {
  let rows = [...constraints];
  isMeasured.forEach((measured, column) => {
    if (measured) return;
    const weight = (row: LinearConstraint): number => Math.abs(row.coefficients[column] ?? 0);
    const pivot = rows.reduce<LinearConstraint | null>(
      (best, row) => (best === null || weight(row) > weight(best) ? row : best),
      null,
    );
    if (pivot === null || weight(pivot) <= NOTHING) return;
    rows = rows.filter((row) => row !== pivot).map((row) => without(row, pivot, column));
  });
  return rows.map(({ coefficients, equals }) => ({
    coefficients: coefficients.filter((_, i) => isMeasured[i] === true),
    equals,
  }));
}

function without(row: LinearConstraint, pivot: LinearConstraint, column: number): LinearConstraint {
  const times = (row.coefficients[column] ?? 0) / (pivot.coefficients[column] ?? 1);
  if (times === 0) return row;
  return {
    coefficients: row.coefficients.map((value, i) => (i === column ? 0 : value - times * (pivot.coefficients[i] ?? 0))),
    equals: row.equals - times * pivot.equals,
  };
}
