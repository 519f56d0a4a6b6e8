import { requireInRange } from "../errors";
import { normalCdf } from "./normal-cdf";

export const NORMAL_PROBABILITY_RANGE = { unit: "", min: 1e-300, max: 1 - 2 ** -53 } as const;

/** Each step triples the digits; the first guess has three. */
const STEPS = 3;

/**
 * Finds the value that a standard normal deviate stays below with a probability.
 *
 * A rational guess, then Halley's steps on the distribution itself.
 *
 * @param p - Probability below.
 * @returns Deviate, within 1e-12.
 * @validRange 1e-300 to the last number below 1.
 * @throws {@link OutOfRangeError} when the probability is outside the valid range.
 * @source Abramowitz and Stegun 1964, 26.2.23 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * normalQuantile(0.975); // 1.96
 */
export function normalQuantile(p: number): number {
  requireInRange("probability", p, NORMAL_PROBABILITY_RANGE);
  if (p > 0.5) return -lowerQuantile(1 - p);
  return p === 0.5 ? 0 : lowerQuantile(p);
}

function lowerQuantile(p: number): number {
  const t = Math.sqrt(-2 * Math.log(p));
  let z = (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
  for (let step = 0; step < STEPS; step++) {
    const off = (normalCdf(z) - p) * Math.sqrt(2 * Math.PI) * Math.exp((z * z) / 2);
    z -= off / (1 + (z * off) / 2);
  }
  return z;
}
