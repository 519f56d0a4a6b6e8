import { expect } from "vitest";

const DECIMAL = /^-?\d+(?:\.(\d+))?$/;

/** Holds a result against a figure as its source prints it: half a unit in the last digit is the tolerance. */
export function expectPrinted(actual: number, printed: string): void {
  const match = DECIMAL.exec(printed);
  if (match === null) throw new Error(`“${printed}” is not a printed decimal number`);
  const decimals = match[1]?.length ?? 0;
  // The last factor lets a result that rounds to the figure through its binary neighbour pass.
  const tolerance = 0.5 * 10 ** -decimals * (1 + 1e-9);
  expect(Math.abs(actual - Number(printed)), `${actual} against ${printed}`).toBeLessThanOrEqual(tolerance);
}
