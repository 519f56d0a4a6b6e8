import { requireInRange } from "../errors";
import { F_RANGE, fUpperTail } from "../statistics";
import { agreementLimits, consistencyLimits, type Limits } from "./intraclass-limits";
import { meanSquares, type MeanSquares } from "./mean-squares";
import { requireScoreTable, type ScoreTable } from "./score-table";

/**
 * Model and unit of Shrout and Fleiss: 1, each entry has judges of its own; 2, the judges stand for others like them; 3, these
 * judges only. One judge's score, or the mean of the k of the panel.
 */
export type IntraclassForm = "1,1" | "2,1" | "3,1" | "1,k" | "2,k" | "3,k";

export const CONFIDENCE_RANGE = { unit: "", min: 0.5, max: 0.99 } as const;

export type IntraclassCorrelation =
  | {
      readonly ok: true;
      readonly icc: number;
      /** Test of no correlation at all. */
      readonly f: number;
      readonly df1: number;
      readonly df2: number;
      readonly p: number;
      /** Lower limit; null where it lies below what any correlation can be. */
      readonly low: number | null;
      readonly high: number;
      readonly meanSquares: MeanSquares;
    }
  | {
      readonly ok: false;
      /** Entries do not differ; judges leave nothing unexplained; or a variance comes out below zero. */
      readonly reason: "no-differences" | "no-scatter" | "negative-variance";
      readonly meanSquares: MeanSquares;
    };

/** Two judges and a mean of them are something else, and a caller without types may name neither. */
const MODEL_RANGE = { unit: "", min: 1, max: 3 } as const;

/**
 * Measures how much of the scatter of scores is differences between entries: the intraclass correlation.
 *
 * Unlike `kendallW` it looks at the points themselves. Forms 1 and 2 count a severe judge as disagreement, form 3 does not.
 *
 * @param a.scores - Rows are judges, columns entries.
 * @param a.form - Which of the six correlations of Shrout and Fleiss.
 * @param a.confidence - How often the interval should hold the truth, 0.95 being usual.
 * @returns Correlation, at most 1, with F test and confidence interval; or why there is none. It may be negative.
 * @validRange 2 to 1000 judges and entries, no empty cells; confidence 0.5 to 0.99.
 * @throws {@link OutOfRangeError} when the table is too small or large, has an empty cell, or form or confidence is not one.
 * @source Shrout and Fleiss 1979 (docs/sources.md#shrout-fleiss-1979), limits as in McGraw and Wong 1996 (docs/sources.md#mcgraw-wong-1996)
 * @example
 * intraclassCorrelation({ scores: [[9, 6, 8, 7, 10, 6], [2, 1, 4, 1, 5, 2], [5, 3, 6, 2, 6, 4], [8, 2, 8, 6, 9, 7]], form: "2,1", confidence: 0.95 }); // 0.290, 0.019 to 0.761
 */
export function intraclassCorrelation(a: {
  readonly scores: ScoreTable;
  readonly form: IntraclassForm;
  readonly confidence: number;
}): IntraclassCorrelation {
  const { judges: k, entries: n } = requireScoreTable(a.scores);
  const confidence = requireInRange("confidence", a.confidence, CONFIDENCE_RANGE);
  const model = requireInRange("model of the correlation", Number(a.form[0]), MODEL_RANGE);
  const ofPanel = a.form.endsWith("k");
  const squares = meanSquares(a.scores);
  if (squares.entries === 0) return { ok: false, reason: "no-differences", meanSquares: squares };
  const error = model === 1 ? squares.within : squares.residual;
  if (error === 0) return { ok: false, reason: "no-scatter", meanSquares: squares };

  const df1 = n - 1;
  const df2 = model === 1 ? n * (k - 1) : (n - 1) * (k - 1);
  const f = squares.entries / error;
  const single: Limits & { readonly icc: number } =
    model === 2
      ? { icc: agreement(squares, n, k), ...agreementLimits({ squares, n, k, confidence }) }
      : { icc: (f - 1) / (f + k - 1), ...consistencyLimits({ f, df1, df2, k, confidence }) };
  // No correlation of k judges is below −1/(k − 1); an estimate that is comes from a variance below zero.
  const stepUp = (icc: number): number => (k * icc) / (1 + (k - 1) * icc);
  const isPossible = (icc: number): boolean => 1 + (k - 1) * icc > 1e-9;
  if (!isPossible(single.icc)) return { ok: false, reason: "negative-variance", meanSquares: squares };
  const icc = ofPanel ? stepUp(single.icc) : single.icc;
  const high = ofPanel ? stepUp(single.high) : single.high;
  const low = isPossible(single.low) ? (ofPanel ? stepUp(single.low) : single.low) : null;
  // Judges who all but agree may pass the largest ratio that the tail is computed for; it is nothing there.
  const p = fUpperTail({ f: Math.min(f, F_RANGE.f.max), df1, df2 });
  return { ok: true, icc, f, df1, df2, p, low, high, meanSquares: squares };
}

function agreement({ entries: b, judges: j, residual: e }: MeanSquares, n: number, k: number): number {
  return (b - e) / (b + (k - 1) * e + (k * (j - e)) / n);
}
