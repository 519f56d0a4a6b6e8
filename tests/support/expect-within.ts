import { expect } from "vitest";

/** Holds a result against a figure whose tolerance is stated rather than read off its digits. */
export function expectWithin(actual: number, expected: number, tolerance: number): void {
  // Vitest prints both numbers, so the message only adds what was asked for.
  expect(Math.abs(actual - expected), `${actual} against ${expected} ± ${tolerance}`).toBeLessThanOrEqual(tolerance);
}
