import { concordance, type NoDifferences } from "./concordance";
import type { ScoreTable } from "./score-table";

export interface Friedman {
  readonly ok: true;
  readonly chiSquared: number;
  readonly df: number;
  readonly p: number;
}

/**
 * Tests whether entries differ at all when every judge scored every one, by ranks within each judge.
 *
 * The statistic is judges × (entries − 1) × W of `kendallW`. Against chi-squared, which is rough for a small panel.
 *
 * @param scores - Rows are judges, columns entries; equal scores share the mean of their ranks.
 * @returns Chi-squared, its degrees of freedom and the probability of as much by chance; or that no judge told the
 * entries apart.
 * @validRange 2 to 1000 judges and entries, no empty cells.
 * @throws {@link OutOfRangeError} when the table is too small or large or has an empty cell.
 * @source Friedman 1937, corrected for ties (docs/sources.md#kendall-1939)
 * @example
 * friedman([[32, 38, 41], [28, 35, 35], [30, 29, 40]]); // { ok: true, chiSquared: 3.82, df: 2, p: 0.148 }
 */
export function friedman(scores: ScoreTable): Friedman | NoDifferences {
  const found = concordance(scores);
  if (!found.ok) return found;
  return { ok: true, chiSquared: found.chiSquared, df: found.df, p: found.p };
}
