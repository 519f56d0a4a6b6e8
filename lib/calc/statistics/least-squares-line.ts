import { requireInRange } from "../errors";
import { exactSum, SAMPLE_SIZE_MAX, SAMPLE_VALUE_RANGE, sampleOf } from "./sample";

/** Fewer than three points leave no scatter about the line. */
export const LINE_POINTS_RANGE = { unit: "", min: 3, max: SAMPLE_SIZE_MAX } as const;

/** Points closer together than this stand above one another. */
const SPREAD_RANGE = { unit: "", min: 1e-80, max: 1e106 } as const;

export interface StraightLine {
  readonly intercept: number;
  readonly slope: number;
  /** Standard errors. */
  readonly interceptError: number;
  readonly slopeError: number;
  readonly residualSd: number;
  /** Share of the scatter of y that the line explains; 0 where y does not vary at all. */
  readonly rSquared: number;
}

/**
 * Fits the straight line from which the sum of squared vertical distances is least.
 *
 * @param points - Pairs of x and y.
 * @returns Line and its standard errors, to about twelve digits.
 * @validRange From three points on, whose x are not all the same.
 * @throws {@link OutOfRangeError} when points are too few, not numbers, or stand above one another.
 * @source Least squares; certified by NIST StRD, Norris (docs/sources.md#nist-strd)
 * @example
 * leastSquaresLine([[0, 1], [1, 3], [2, 4]]); // slope 1.5, intercept 1.1667
 */
export function leastSquaresLine(points: readonly (readonly [x: number, y: number])[]): StraightLine {
  requireInRange("number of points", points.length, LINE_POINTS_RANGE);
  for (const [x, y] of points) {
    requireInRange("x", x, SAMPLE_VALUE_RANGE);
    requireInRange("y", y, SAMPLE_VALUE_RANGE);
  }
  const x = sampleOf(points.map((point) => point[0]));
  const y = sampleOf(points.map((point) => point[1]));
  requireInRange("sum of squares of x", x.squares, SPREAD_RANGE);

  const centred = points.map(([px, py]) => [px - x.origin - x.shift, py - y.origin - y.shift] as const);
  const slope = exactSum(centred.map(([dx, dy]) => dx * dy)) / x.squares;
  const residuals = sampleOf(
    centred.map(([dx, dy]) => dy - slope * dx),
    0,
  );
  const variance = residuals.squares / (x.n - 2);
  return {
    slope,
    intercept: y.mean - slope * x.mean,
    slopeError: Math.sqrt(variance / x.squares),
    interceptError: Math.sqrt(variance * (1 / x.n + (x.mean / x.squares) * x.mean)),
    residualSd: Math.sqrt(variance),
    rSquared: y.squares === 0 ? 0 : Math.max(0, 1 - residuals.squares / y.squares),
  };
}
