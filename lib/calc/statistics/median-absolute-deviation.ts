import { requireSample } from "./sample";
import { sortedQuantile } from "./sorted-quantile";

/** What a normal distribution's sd is of its median absolute deviation: 1 / Φ⁻¹(3/4), as the source rounds it. */
const NORMAL = 1.4826;

export interface MedianDeviation {
  readonly median: number;
  /** Median distance from the median. */
  readonly deviation: number;
  /** The sd that a normal distribution with this deviation has. */
  readonly sd: number;
}

/**
 * Finds the middle of a sample and its scatter in a way that stray values hardly move.
 *
 * @param values - The sample.
 * @returns Median, median absolute deviation and the sd that goes with it, in the unit of the values.
 * @validRange From one value on; up to half of the values may be stray.
 * @throws {@link OutOfRangeError} when there is no value or one is not a number.
 * @source Iglewicz and Hoaglin 1993 (docs/sources.md#iglewicz-hoaglin-1993)
 * @example
 * medianAbsoluteDeviation([1, 2, 3, 4, 100]); // median 3, deviation 1, sd 1.4826
 */
export function medianAbsoluteDeviation(values: readonly number[]): MedianDeviation {
  requireSample("value", values, 1);
  const median = medianOf(values);
  const deviation = medianOf(values.map((value) => Math.abs(value - median)));
  return { median, deviation, sd: NORMAL * deviation };
}

const medianOf = (values: readonly number[]): number =>
  sortedQuantile(
    [...values].sort((a, b) => a - b),
    0.5,
  );
