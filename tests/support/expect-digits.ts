import { expect } from "vitest";

/** Holds a result against a certified figure to a number of significant digits: the relative error is below half of the last. */
export function expectDigits(actual: number, certified: number, digits: number): void {
  const error = Math.abs(actual / certified - 1);
  expect(error, `${actual} against ${certified} to ${digits} digits`).toBeLessThanOrEqual(0.5 * 10 ** (1 - digits));
}
