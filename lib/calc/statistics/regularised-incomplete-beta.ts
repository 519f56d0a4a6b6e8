import { requireInRange } from "../errors";
import { betaTail } from "./beta-tail";

export const BETA_RANGE = {
  x: { unit: "", min: 0, max: 1 },
  shape: { unit: "", min: 0.05, max: 1e6 },
} as const;

/**
 * Gives the regularised incomplete beta function, on which the tails of the binomial, of F and of Student's t rest.
 *
 * @param a.x - Upper end of the integral, 0 to 1.
 * @param a.a - First shape.
 * @param a.b - Second shape.
 * @returns I from 0 at x = 0 to 1 at x = 1, within 1e-12.
 * @validRange Shapes from 0.05 to a million.
 * @throws {@link OutOfRangeError} when the end or a shape is outside its range.
 * @source Abramowitz and Stegun 1964, 26.5.8 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * regularisedIncompleteBeta({ x: 0.5, a: 2, b: 3 }); // 0.6875
 */
export function regularisedIncompleteBeta({
  x,
  a,
  b,
}: {
  readonly x: number;
  readonly a: number;
  readonly b: number;
}): number {
  requireInRange("upper end", x, BETA_RANGE.x);
  requireInRange("first shape", a, BETA_RANGE.shape);
  requireInRange("second shape", b, BETA_RANGE.shape);
  return betaTail({ x, rest: 1 - x, a, b });
}
