import type { ScoreTable } from "./score-table";

/** Mean squares of a full table, in the letters of Shrout and Fleiss. */
export interface MeanSquares {
  /** BMS: between entries. */
  readonly entries: number;
  /** WMS: within entries. */
  readonly within: number;
  /** JMS: between judges. */
  readonly judges: number;
  /** EMS: what neither explains. */
  readonly residual: number;
}

/**
 * Splits the scatter of a full table of scores into entries, judges and rest.
 *
 * The rest is summed cell by cell: as a difference of sums of squares it would lose its digits when judges agree.
 *
 * @param scores - Rows are judges, columns entries; at least two of each.
 * @returns Mean squares, where scatter that is only rounding counts as none.
 * @source Shrout and Fleiss 1979, table 3 (docs/sources.md#shrout-fleiss-1979)
 */
export function meanSquares(scores: ScoreTable): MeanSquares {
  const judges = scores.length;
  const entries = scores[0]?.length ?? 0;
  const judgeMeans = scores.map(mean);
  const entryMeans = Array.from({ length: entries }, (_, entry) => mean(scores.map((row) => row[entry] ?? 0)));
  const grand = mean(judgeMeans);
  const cells = (square: (score: number, judge: number, entry: number) => number): number =>
    scores.reduce(
      (sum, row, judge) => sum + row.reduce((part, score, entry) => part + square(score, judge, entry), 0),
      0,
    );

  const largest = Math.max(1, ...scores.map((row) => Math.max(...row.map(Math.abs))));
  const clean = (square: number): number => (square <= (1e-12 * largest) ** 2 ? 0 : square);
  return {
    entries: clean((judges * squaresAbout(entryMeans, grand)) / (entries - 1)),
    judges: clean((entries * squaresAbout(judgeMeans, grand)) / (judges - 1)),
    within: clean(cells((score, _, entry) => (score - (entryMeans[entry] ?? 0)) ** 2) / (entries * (judges - 1))),
    residual: clean(
      cells((score, judge, entry) => (score - (entryMeans[entry] ?? 0) - (judgeMeans[judge] ?? 0) + grand) ** 2) /
        ((entries - 1) * (judges - 1)),
    ),
  };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const squaresAbout = (values: readonly number[], centre: number): number =>
  values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
