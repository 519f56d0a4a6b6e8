import { OutOfRangeError, requireInRange } from "../errors";

/** Scores or ranks; wider than any scale in use. */
export const SCORE_RANGE = { unit: "", min: -1e6, max: 1e6 } as const;

/** With one judge there is nobody to agree with, and with one entry nothing to agree about. */
export const TABLE_RANGE = {
  judges: { unit: "", min: 2, max: 1000 },
  entries: { unit: "", min: 2, max: 1000 },
} as const;

/** Scores of a panel: a row for each judge, a column for each entry. */
export type ScoreTable = readonly (readonly number[])[];

/**
 * Checks that every judge scored every entry.
 *
 * @param scores - Rows are judges, columns entries. A caller without types may leave cells empty, which is refused.
 * @returns Number of judges and of entries.
 * @throws {@link OutOfRangeError} when the table is too small or large, a row has gaps or a score is no finite number.
 */
export function requireScoreTable(scores: readonly (readonly (number | null)[])[]): {
  readonly judges: number;
  readonly entries: number;
} {
  const judges = requireInRange("number of judges", scores.length, TABLE_RANGE.judges);
  const entries = requireInRange("number of entries", scores[0]?.length ?? 0, TABLE_RANGE.entries);
  scores.forEach((row, judge) => {
    requireInRange(`number of scores of judge ${judge + 1}`, row.length, { unit: "", min: entries, max: entries });
    row.forEach((score, entry) => {
      requireScore(score, judge, entry);
    });
  });
  return { judges, entries };
}

/**
 * Checks one cell of a table of scores.
 *
 * @returns The score.
 * @throws {@link OutOfRangeError} naming judge and entry, counted from one, when the cell is empty or out of range.
 */
export function requireScore(score: number | null | undefined, judge: number, entry: number): number {
  const cell = `score of judge ${judge + 1} for entry ${entry + 1}`;
  // An empty cell would compare as a zero.
  if (score === null || score === undefined) throw new OutOfRangeError(cell, Number.NaN, SCORE_RANGE);
  return requireInRange(cell, score, SCORE_RANGE);
}
