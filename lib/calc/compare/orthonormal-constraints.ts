import { OutOfRangeError } from "../errors";

/** One balance: Σ coefficientᵢ xᵢ = equals. */
export interface LinearConstraint {
  readonly coefficients: readonly number[];
  readonly equals: number;
}

/** A balance that follows from the others, or from nothing, within rounding. */
const DEPENDENT = 1e-12;

/** Two balances that contradict each other by more than this share cannot both hold. */
const CONTRADICTION = 1e-9;

/**
 * Makes the balances orthonormal in the adjustments counted in standard uncertainties, u = (x − y)/σ.
 *
 * Gram–Schmidt, each row twice, which is the QR factorisation that solves the least-squares problem. A balance that
 * follows from the others adds nothing and is left out.
 *
 * @returns Rows q and right sides r with q·u = r, as many as there are independent balances.
 * @throws {@link OutOfRangeError} when two balances contradict each other.
 */
export function orthonormalConstraints(
  constraints: readonly LinearConstraint[],
  measured: readonly number[],
  sigma: readonly number[],
): { readonly row: readonly number[]; readonly right: number }[] {
  const found: { readonly row: readonly number[]; readonly right: number }[] = [];
  for (const { coefficients, equals } of constraints) {
    let row = coefficients.map((coefficient, i) => coefficient * (sigma[i] ?? 0));
    let right = equals - dot(coefficients, measured);
    const sizeBefore = Math.sqrt(dot(row, row));
    const scale = Math.abs(equals) + coefficients.reduce((sum, c, i) => sum + Math.abs(c * (measured[i] ?? 0)), 0);
    for (let pass = 0; pass < 2; pass++) {
      for (const other of found) {
        const shared = dot(row, other.row);
        row = row.map((value, i) => value - shared * (other.row[i] ?? 0));
        right -= shared * other.right;
      }
    }
    const size = Math.sqrt(dot(row, row));
    if (size > DEPENDENT * sizeBefore) {
      found.push({ row: row.map((value) => value / size), right: right / size });
    } else if (Math.abs(right) > CONTRADICTION * (scale + sizeBefore)) {
      throw new OutOfRangeError("balance that contradicts the others, left over", right, { unit: "", min: 0, max: 0 });
    }
  }
  return found;
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}
