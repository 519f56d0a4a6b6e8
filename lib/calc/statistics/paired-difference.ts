import { OutOfRangeError, requireInRange } from "../errors";
import { requireSample, SAMPLE_SIZE_MAX, sampleOf } from "./sample";
import { studentTQuantile } from "./student-t-quantile";
import { STUDENT_T_RANGE, studentTUpperTail } from "./student-t-upper-tail";

export const PAIRS_RANGE = { unit: "", min: 2, max: SAMPLE_SIZE_MAX } as const;

export type PairedDifference =
  | {
      readonly ok: true;
      /** Mean of a − b. */
      readonly meanDifference: number;
      readonly sd: number;
      readonly standardError: number;
      readonly t: number;
      readonly df: number;
      /** Probability of a difference at least as far from nothing, on either side, by chance. */
      readonly p: number;
      readonly low80: number;
      readonly high80: number;
      readonly low95: number;
      readonly high95: number;
    }
  | {
      readonly ok: false;
      /** All pairs differ by the same, so there is nothing to measure the difference by. */
      readonly reason: "no-scatter";
      readonly meanDifference: number;
    };

/**
 * Compares two measurements of the same things by Student's t of their differences.
 *
 * @param a.a - One measurement of each thing.
 * @param a.b - The other, in the same order.
 * @returns Mean difference with its intervals and probability, in the unit of the measurements.
 * @validRange From two pairs on; the differences taken as normal.
 * @throws {@link OutOfRangeError} when there are too few pairs, the lists differ in length or a value is not a number.
 * @source Student 1908 (docs/sources.md#student-1908)
 * @example
 * pairedDifference({ a: [5, 7, 6], b: [4, 5, 5] }); // mean difference 1.333, t 4, p 0.057
 */
export function pairedDifference({
  a,
  b,
}: {
  readonly a: readonly number[];
  readonly b: readonly number[];
}): PairedDifference {
  requireInRange("number of pairs", a.length, PAIRS_RANGE);
  if (b.length !== a.length)
    throw new OutOfRangeError("number of second values", b.length, { unit: "", min: a.length, max: a.length });
  requireSample("value", a, PAIRS_RANGE.min);
  requireSample("value", b, PAIRS_RANGE.min);
  const { n, mean, squares } = sampleOf(a.map((value, i) => value - (b[i] ?? 0)));
  const df = n - 1;
  const sd = Math.sqrt(squares / df);
  const standardError = sd / Math.sqrt(n);
  const t = mean / standardError;
  // Written this way round so that 0 / 0 counts as well.
  if (!(Math.abs(t) <= STUDENT_T_RANGE.t.max)) return { ok: false, reason: "no-scatter", meanDifference: mean };
  const reach80 = standardError * studentTQuantile({ p: 0.9, df });
  const reach95 = standardError * studentTQuantile({ p: 0.975, df });
  return {
    ok: true,
    meanDifference: mean,
    sd,
    standardError,
    t,
    df,
    p: 2 * studentTUpperTail({ t: Math.abs(t), df }),
    low80: mean - reach80,
    high80: mean + reach80,
    low95: mean - reach95,
    high95: mean + reach95,
  };
}
