import { cholesky, inverse, type Cholesky } from "../numerics/cholesky";
import type { ScoredTable } from "./scored-table";

/** Least-squares fit of score = entry + judge, the judges' parts adding up to nothing. */
export interface JudgeModel {
  /** For each entry the score that the average judge would give. */
  readonly adjusted: readonly number[];
  /** For each judge how far above the average judge he or she scores. */
  readonly mildness: readonly number[];
  readonly residualSquares: number;
  /** For each judge the sum of squares of what the model leaves unexplained. */
  readonly squaresOfJudge: readonly number[];
  /** Covariance of two judges' parts, in units of the residual variance. */
  readonly covariance: (judge: number, other: number) => number;
  /** Factor of the judges' normal equations, bordered so that it can be inverted. */
  readonly factor: Cholesky;
}

/**
 * Fits judges and entries together, whatever the gaps, when everything is connected.
 *
 * The entries are eliminated first: what is left is a system as large as the panel. Its matrix C does not see a shift of
 * all judges; adding 1/judges to every cell leaves differences alone and makes it invertible.
 *
 * @param table - Scores that tie all judges and entries together.
 * @returns Means, parts of the judges, what is left and how the judges' parts vary together.
 * @source Normal equations of the two-way layout (docs/sources.md#scheffe-1959)
 */
export function judgeModel(table: ScoredTable): JudgeModel {
  const { judges } = table;
  const matrix = new Float64Array(judges * judges).fill(1 / judges);
  const add = (i: number, j: number, by: number): number =>
    (matrix[i * judges + j] = (matrix[i * judges + j] ?? 0) + by);
  table.byJudge.forEach((row, judge) => add(judge, judge, row.entries.length));
  for (const { judges: panel } of table.byEntry) {
    for (const i of panel) for (const j of panel) add(i, j, -1 / panel.length);
  }
  const factor = cholesky(matrix, judges);
  const inverted = inverse(factor);
  const covariance = (i: number, j: number): number => (inverted[i * judges + j] ?? 0) - 1 / judges;

  const aboveEntries = table.byJudge.map((row) =>
    row.entries.reduce((sum, entry, at) => sum + (row.scores[at] ?? 0) - (table.byEntry[entry]?.mean ?? 0), 0),
  );
  const mildness = table.byJudge.map((_, i) => aboveEntries.reduce((sum, q, j) => sum + covariance(i, j) * q, 0));
  const adjusted = table.byEntry.map(
    ({ judges: panel, mean }) => mean - panel.reduce((sum, i) => sum + (mildness[i] ?? 0), 0) / panel.length,
  );
  const squaresOfJudge = table.byJudge.map((row, judge) =>
    row.entries.reduce(
      (sum, entry, at) => sum + ((row.scores[at] ?? 0) - (adjusted[entry] ?? 0) - (mildness[judge] ?? 0)) ** 2,
      0,
    ),
  );
  return {
    adjusted,
    mildness,
    squaresOfJudge,
    residualSquares: squaresOfJudge.reduce((sum, squares) => sum + squares, 0),
    covariance,
    factor,
  };
}

/**
 * Gives the covariance of two entries' adjusted means, or the variance of one, in units of the residual variance.
 *
 * The judges' part is that of their mean; the entry's own scores add 1/n to its variance.
 *
 * @returns Covariance of the means.
 */
export function entryCovariance(table: ScoredTable, model: JudgeModel, entry: number, other: number): number {
  const panel = table.byEntry[entry]?.judges ?? [];
  const otherPanel = table.byEntry[other]?.judges ?? [];
  let sum = 0;
  for (const i of panel) for (const j of otherPanel) sum += model.covariance(i, j);
  return sum / (panel.length * otherPanel.length) + (entry === other ? 1 / panel.length : 0);
}
