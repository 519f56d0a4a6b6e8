import { requireInRange } from "../errors";
import { requireScore } from "./score-table";

export const ADJUSTED_RANGE = {
  judges: { unit: "", min: 1, max: 200 },
  entries: { unit: "", min: 1, max: 1000 },
} as const;

/** Scores with gaps: a row for each judge, a column for each entry, null where a judge did not taste. */
export type GappedScores = readonly (readonly (number | null)[])[];

/** The scores that there are, by judge and by entry. */
export interface ScoredTable {
  readonly judges: number;
  readonly entries: number;
  readonly scores: number;
  /** For each judge the entries that he or she scored, and the scores. */
  readonly byJudge: readonly { readonly entries: readonly number[]; readonly scores: readonly number[] }[];
  /** For each entry its judges and the mean of their scores; 0 without any. */
  readonly byEntry: readonly { readonly judges: readonly number[]; readonly mean: number }[];
}

/**
 * Collects the scores of a table with gaps.
 *
 * @returns The scores by judge and by entry.
 * @throws {@link OutOfRangeError} when the table is too small or large, rows differ in length or a score is out of range.
 */
export function scoredTable(table: GappedScores): ScoredTable {
  const judges = requireInRange("number of judges", table.length, ADJUSTED_RANGE.judges);
  const entries = requireInRange("number of entries", table[0]?.length ?? 0, ADJUSTED_RANGE.entries);
  const byEntry = Array.from({ length: entries }, () => ({ judges: [] as number[], mean: 0 }));
  let count = 0;
  const byJudge = table.map((row, judge) => {
    requireInRange(`number of cells of judge ${judge + 1}`, row.length, { unit: "", min: entries, max: entries });
    const scored: number[] = [];
    const scores: number[] = [];
    row.forEach((cell, entry) => {
      if (cell === null) return;
      const score = requireScore(cell, judge, entry);
      scored.push(entry);
      scores.push(score);
      count++;
      const column = byEntry[entry];
      if (column === undefined) return;
      column.judges.push(judge);
      column.mean += (score - column.mean) / column.judges.length;
    });
    return { entries: scored, scores };
  });
  return { judges, entries, scores: count, byJudge, byEntry };
}
