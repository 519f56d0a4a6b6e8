import { requireSample, sampleOf } from "./sample";
import { sortedQuantile } from "./sorted-quantile";

export interface Description {
  readonly n: number;
  readonly mean: number;
  /** Of the sample, with n − 1. */
  readonly sd: number;
  readonly min: number;
  readonly lowerQuartile: number;
  readonly median: number;
  readonly upperQuartile: number;
  readonly max: number;
}

/**
 * Describes a sample by mean, scatter and quartiles.
 *
 * Quartiles lie on straight lines between the sorted values (Hyndman and Fan's seventh definition); other definitions differ by
 * up to half the gap between neighbours.
 *
 * @param values - The sample.
 * @returns Its figures, in the unit of the values; the sd to about ten digits of what the values hold.
 * @validRange From two values on.
 * @throws {@link OutOfRangeError} when there are fewer than two values or one is not a number.
 * @source Hyndman and Fan 1996 (docs/sources.md#hyndman-fan-1996); certified by NIST StRD (docs/sources.md#nist-strd)
 * @example
 * describe([1, 2, 4, 9]); // mean 4, sd 3.559, quartiles 1.75, 3 and 5.25
 */
export function describe(values: readonly number[]): Description {
  requireSample("value", values, 2);
  const sorted = [...values].sort((a, b) => a - b);
  const { n, mean, squares } = sampleOf(values);
  return {
    n,
    mean,
    sd: Math.sqrt(squares / (n - 1)),
    min: sortedQuantile(sorted, 0),
    lowerQuartile: sortedQuantile(sorted, 0.25),
    median: sortedQuantile(sorted, 0.5),
    upperQuartile: sortedQuantile(sorted, 0.75),
    max: sortedQuantile(sorted, 1),
  };
}
