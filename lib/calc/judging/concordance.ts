import { chiSquaredUpperTail } from "../statistics";
import { averageRanks } from "./average-ranks";
import { requireScoreTable, type ScoreTable } from "./score-table";

export interface Concordance {
  readonly ok: true;
  readonly w: number;
  readonly chiSquared: number;
  readonly df: number;
  readonly p: number;
}

/** Every judge gave all entries the same score: there is no order to agree on. */
export interface NoDifferences {
  readonly ok: false;
  readonly reason: "no-differences";
}

/**
 * Compares the rank sums of the entries with those of full agreement; W and Friedman's test are two readings of it.
 *
 * @returns W, chi-squared = judges (entries − 1) W and its probability, or that no judge told the entries apart.
 * @source Kendall and Babington Smith 1939; Friedman 1937 (docs/sources.md#kendall-1939)
 */
export function concordance(scores: ScoreTable): Concordance | NoDifferences {
  const { judges, entries } = requireScoreTable(scores);
  const sums = new Array<number>(entries).fill(0);
  let ties = 0;
  for (const row of scores) {
    const ranking = averageRanks(row);
    ranking.ranks.forEach((rank, entry) => (sums[entry] = (sums[entry] ?? 0) + rank));
    ties += ranking.ties;
  }
  const mean = (judges * (entries + 1)) / 2;
  const squares = sums.reduce((total, sum) => total + (sum - mean) ** 2, 0);
  const most = judges ** 2 * (entries ** 3 - entries) - judges * ties;
  if (most === 0) return { ok: false, reason: "no-differences" };

  const w = (12 * squares) / most;
  const df = entries - 1;
  const chiSquared = judges * df * w;
  return { ok: true, w, chiSquared, df, p: chiSquaredUpperTail({ chiSquared, df }) };
}
