import { requireInRange } from "../errors";
import { requireSample, sampleOf } from "./sample";
import { studentTQuantile } from "./student-t-quantile";

export const GRUBBS_RANGE = {
  values: { unit: "", min: 3, max: 10_000 },
  alpha: { unit: "", min: 1e-6, max: 0.5 },
} as const;

export type Grubbs =
  | {
      readonly ok: true;
      /** Distance of the farthest value from the mean, in sd of the sample. */
      readonly g: number;
      /** What chance exceeds once in 1/alpha samples. */
      readonly critical: number;
      readonly outlying: boolean;
      /** Place and size of the farthest value. */
      readonly index: number;
      readonly value: number;
    }
  | {
      readonly ok: false;
      /** All values are the same. */
      readonly reason: "no-scatter";
    };

/**
 * Tests whether the farthest value of a normal sample lies too far out to belong to it.
 *
 * For one value at most: two strays on one side hide each other; the modified z does not mind them.
 *
 * @param a.values - The sample.
 * @param a.alpha - Share of sound samples that may be called stray.
 * @param a.side - Where a stray is looked for; "both" unless only one side is in question beforehand.
 * @returns The statistic, what it is to be held against, and the value in question.
 * @validRange 3 to 10 000 values, alpha from 1e-6 to 0.5; the sample apart from the stray taken as normal.
 * @throws {@link OutOfRangeError} when there are too few values, one is not a number or alpha is outside its range.
 * @source Grubbs 1969; NIST/SEMATECH e-Handbook 1.3.5.17.1 (docs/sources.md#nist-ehandbook)
 * @example
 * grubbs({ values: [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57], alpha: 0.05, side: "upper" });
 * // g 2.4687, critical 2.032, outlying
 */
export function grubbs(a: {
  readonly values: readonly number[];
  readonly alpha: number;
  readonly side?: "both" | "upper" | "lower";
}): Grubbs {
  const { values, side = "both" } = a;
  const n = requireInRange("number of values", values.length, GRUBBS_RANGE.values);
  requireSample("value", values, GRUBBS_RANGE.values.min);
  const alpha = requireInRange("alpha", a.alpha, GRUBBS_RANGE.alpha);
  const { mean, squares } = sampleOf(values);
  if (squares === 0) return { ok: false, reason: "no-scatter" };

  const distances = values.map((value) =>
    side === "both" ? Math.abs(value - mean) : side === "upper" ? value - mean : mean - value,
  );
  const index = distances.reduce((farthest, distance, i) => (distance > (distances[farthest] ?? 0) ? i : farthest), 0);
  const g = (distances[index] ?? 0) / Math.sqrt(squares / (n - 1));
  const t = studentTQuantile({ p: 1 - alpha / (side === "both" ? 2 * n : n), df: n - 2 });
  const critical = ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
  return { ok: true, g, critical, outlying: g > critical, index, value: values[index] ?? 0 };
}
