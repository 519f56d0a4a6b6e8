import { OutOfRangeError, requireInRange } from "../errors";

export const LINEAR_RANGE = {
  entry: { unit: "", min: -1e60, max: 1e60 },
  unknowns: { unit: "", min: 1, max: 200 },
  rows: { unit: "", min: 1, max: 20_000 },
  weight: { unit: "", min: 1e-30, max: 1e30 },
} as const;

/**
 * Gives the power of two that brings a list to about 1, so that scaling costs no digits.
 *
 * @param nothing - What is at most this large counts as zero.
 * @returns The factor; 0 for a list of zeros.
 */
export function scaleOf(values: readonly number[], nothing: number): number {
  const largest = Math.max(...values.map(Math.abs));
  return largest <= nothing ? 0 : 2 ** -Math.round(Math.log2(largest));
}

/**
 * Refuses a matrix whose rows differ in length or hold what is not a number.
 *
 * @param quantity - What a row is, for the message of a refusal.
 * @param length - Length that every row must have.
 * @throws {@link OutOfRangeError} when a row or an entry does not fit.
 */
export function requireRows(quantity: string, rows: readonly (readonly number[])[], length: number): void {
  for (const row of rows) {
    requireLength(`length of a ${quantity}`, row.length, length);
    for (const entry of row) requireInRange("entry", entry, LINEAR_RANGE.entry);
  }
}

/**
 * Refuses a list of the wrong length.
 *
 * @throws {@link OutOfRangeError} when the length is not the one wanted.
 */
export function requireLength(quantity: string, length: number, wanted: number): void {
  if (length !== wanted) throw new OutOfRangeError(quantity, length, { unit: "", min: wanted, max: wanted });
}
