import { OutOfRangeError, requireInRange, type Range } from "../errors";

/** What an order may hold. Amounts are whole grams, millilitres or pieces; money is in the smallest unit of its currency. */
export const ORDER_RANGE = {
  amount: { unit: "", min: 0, max: 5_000_000 },
  size: { unit: "", min: 1, max: 5_000_000 },
  price: { unit: "", min: 0, max: 100_000_000 },
  share: { unit: "", min: 0, max: 1_000_000_000_000 },
  kinds: { unit: "", min: 1, max: 20 },
  people: { unit: "", min: 1, max: 500 },
  total: { unit: "", min: 0, max: 1_000_000_000_000_000 },
} as const;

/**
 * Passes a whole number of its range through.
 *
 * @returns The value unchanged.
 * @throws {@link OutOfRangeError} when the value is outside the range or not whole.
 */
export function requireWhole(quantity: string, value: number, range: Range): number {
  requireInRange(quantity, value, range);
  if (!Number.isInteger(value)) throw new OutOfRangeError(quantity, value, range);
  return value;
}
