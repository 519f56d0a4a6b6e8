import { concordance, type Concordance, type NoDifferences } from "./concordance";
import type { ScoreTable } from "./score-table";

/**
 * Measures how far judges put entries in the same order: Kendall's coefficient of concordance.
 *
 * Only the order counts, so a severe judge and a mild one may agree fully. With fewer than about seven entries the
 * probability from chi-squared is rough.
 *
 * @param scores - Rows are judges, columns entries; equal scores share the mean of their ranks.
 * @returns W from 0, no common order, to 1, the same order; chi-squared, its degrees of freedom and the probability of
 * at least as much agreement by chance. Where every judge gave all entries the same score W is undefined, and said so.
 * @validRange 2 to 1000 judges and entries, no empty cells.
 * @throws {@link OutOfRangeError} when the table is too small or large or has an empty cell.
 * @source Kendall and Babington Smith 1939, corrected for ties (docs/sources.md#kendall-1939)
 * @example
 * kendallW([[32, 38, 41], [28, 35, 35], [30, 29, 40]]); // { ok: true, w: 0.636, chiSquared: 3.82, df: 2, p: 0.148 }
 */
export function kendallW(scores: ScoreTable): Concordance | NoDifferences {
  return concordance(scores);
}
