import { medianAbsoluteDeviation } from "./median-absolute-deviation";

/** A normal distribution's median absolute deviation in standard deviations. */
const NORMAL = 0.6745;
/** Values further out than this are called stray. */
const STRAY = 3.5;

export type ModifiedZ =
  | {
      readonly ok: true;
      readonly z: readonly number[];
      /** Places of stray values. */ readonly stray: readonly number[];
    }
  | {
      readonly ok: false;
      /** More than half of the values are the same, so any other is infinitely far out. */
      readonly reason: "no-scatter";
      readonly median: number;
    };

/**
 * Measures how far each value lies from the middle of its sample, in standard deviations that stray values hardly move.
 *
 * @param values - The sample.
 * @returns Modified z of each value and the places of those beyond 3.5.
 * @validRange From one value on.
 * @throws {@link OutOfRangeError} when there is no value or one is not a number.
 * @source Iglewicz and Hoaglin 1993 (docs/sources.md#iglewicz-hoaglin-1993)
 * @example
 * modifiedZ([1, 2, 3, 4, 100]); // z of the last 65.4, stray [4]
 */
export function modifiedZ(values: readonly number[]): ModifiedZ {
  const { median, deviation } = medianAbsoluteDeviation(values);
  const z = values.map((value) => (NORMAL * (value - median)) / deviation);
  if (!z.every(Number.isFinite)) return { ok: false, reason: "no-scatter", median };
  return { ok: true, z, stray: z.flatMap((each, i) => (Math.abs(each) > STRAY ? [i] : [])) };
}
