import { requireInRange } from "../errors";
import { upperIncompleteGamma } from "./upper-incomplete-gamma";

export const NORMAL_DEVIATE_RANGE = { unit: "", min: -1e6, max: 1e6 } as const;

/**
 * Finds how probable it is that a standard normal deviate stays below a value.
 *
 * @param z - Deviate: distance from the mean in standard deviations.
 * @returns Probability, within 1e-12 of its size below 0 and within 1e-15 above.
 * @validRange −1e6 to 1e6; below −38 the probability is under the least number a computer holds and comes out as 0.
 * @throws {@link OutOfRangeError} when the deviate is outside the valid range.
 * @source Abramowitz and Stegun 1964, 26.2.2 and 26.4.19 with one degree of freedom (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * normalCdf(1.96); // 0.975
 */
export function normalCdf(z: number): number {
  requireInRange("normal deviate", z, NORMAL_DEVIATE_RANGE);
  // z² is chi-squared with one degree of freedom; half of its tail lies on each side.
  const beyond = upperIncompleteGamma(1, (z * z) / 2) / 2;
  return z < 0 ? beyond : 1 - beyond;
}
