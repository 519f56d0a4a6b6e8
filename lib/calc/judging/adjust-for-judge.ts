import { studentTQuantile } from "../statistics";
import { chancesOfFirst } from "./chances-of-first";
import { connectedGroups, type ConnectedGroup } from "./connected-groups";
import { entryCovariance, judgeModel, type JudgeModel } from "./judge-model";
import { scoredTable, type GappedScores, type ScoredTable } from "./scored-table";
import { requireInRange } from "../errors";
import { SEED_RANGE } from "./seeded-random";

export interface AdjustedEntry {
  /** The score that the average judge would give. */
  readonly adjusted: number;
  readonly standardError: number;
  readonly low80: number;
  readonly high80: number;
  /** Probability that this entry is the best of all. */
  readonly chanceOfFirst: number;
}

export interface JudgeEffect {
  /** Points that the judge scores below the average judge; negative for a mild one. */
  readonly severity: number;
  readonly standardError: number;
  /** Standard deviation of the judge's scores; null with fewer than two. */
  readonly spread: number | null;
  /** The same of the adjusted means of the entries that he or she scored: what the spread would be in the average judge. */
  readonly expectedSpread: number | null;
  /** Root mean square of what the model leaves of the judge's scores. */
  readonly scatter: number;
}

export type AdjustedForJudge =
  | {
      readonly ok: true;
      readonly entries: readonly AdjustedEntry[];
      readonly judges: readonly JudgeEffect[];
      /** Standard deviation of a single score about entry and judge. */
      readonly residualSd: number;
      readonly df: number;
    }
  | { readonly ok: false; readonly reason: "disconnected"; readonly groups: readonly ConnectedGroup[] }
  | {
      readonly ok: false;
      /** Every score is used up by entries and judges: none is left to tell how far to trust them. */
      readonly reason: "too-few-scores";
      readonly adjusted: readonly number[];
      readonly severity: readonly number[];
    };

/** Scatter below this part of the largest score is rounding. */
const ROUNDING = 1e-12;

/**
 * Corrects the scores of entries for the severity of the judges who happened to taste them.
 *
 * Least squares on score = entry + judge, which needs no full table: it compares entries through judges that they share.
 * It leaves out that a judge may use a wider scale or like some entries for their style; `spread` and `scatter` show both.
 *
 * @param a.scores - Rows are judges, columns entries; null where a judge did not taste.
 * @param a.seed - Chooses the draws behind the chances of being first.
 * @returns For each entry the score of the average judge with an interval that holds the truth in 80 of 100 cases, and its
 * chance of being first, off by some 0.007; for each judge severity and spread. Where judges and entries fall into groups
 * that share nothing, the groups; where no score is to spare, the means without an error.
 * @validRange 1 to 200 judges, 1 to 1000 entries.
 * @throws {@link OutOfRangeError} when the table is too large, a row has another length or a score is out of range.
 * @source Least squares of the two-way layout, Scheffé 1959 (docs/sources.md#scheffe-1959)
 * @example
 * adjustForJudge({ scores: [[30, 34, null], [null, 38, 31], [29, null, 28]], seed: 1 }); // entry 2 leads with 35.3
 */
export function adjustForJudge(a: { readonly scores: GappedScores; readonly seed: number }): AdjustedForJudge {
  const table = scoredTable(a.scores);
  const seed = requireInRange("seed", a.seed, SEED_RANGE);
  const groups = connectedGroups(
    table.byJudge.map(({ entries }) => entries),
    table.entries,
  );
  if (groups.length > 1) return { ok: false, reason: "disconnected", groups };

  const model = judgeModel(table);
  const { adjusted } = model;
  const df = table.scores - table.entries - table.judges + 1;
  if (df < 1) {
    return { ok: false, reason: "too-few-scores", adjusted, severity: model.mildness.map((points) => 0 - points) };
  }
  const residualSd = scatterOf(table, model, df);
  const reach = studentTQuantile({ p: 0.9, df });
  const chances = residualSd === 0 ? sharedFirst(adjusted) : chancesOfFirst({ table, model, residualSd, df, seed });
  const entries = adjusted.map((mean, entry) => {
    const standardError = residualSd * Math.sqrt(entryCovariance(table, model, entry, entry));
    const half = reach * standardError;
    return {
      adjusted: mean,
      standardError,
      low80: mean - half,
      high80: mean + half,
      chanceOfFirst: chances[entry] ?? 0,
    };
  });
  return { ok: true, entries, judges: judgeEffects(table, model, residualSd), residualSd, df };
}

function judgeEffects(table: ScoredTable, model: JudgeModel, residualSd: number): readonly JudgeEffect[] {
  return table.byJudge.map((row, judge) => ({
    severity: 0 - (model.mildness[judge] ?? 0),
    standardError: residualSd * Math.sqrt(Math.max(0, model.covariance(judge, judge))),
    spread: standardDeviation(row.scores),
    expectedSpread: standardDeviation(row.entries.map((entry) => model.adjusted[entry] ?? 0)),
    scatter: Math.sqrt((model.squaresOfJudge[judge] ?? 0) / row.scores.length),
  }));
}

function scatterOf(table: ScoredTable, model: JudgeModel, df: number): number {
  const sd = Math.sqrt(model.residualSquares / df);
  const largest = Math.max(...table.byJudge.map(({ scores }) => Math.max(...scores.map(Math.abs))));
  return sd <= ROUNDING * largest ? 0 : sd;
}

// Without scatter nothing is left to chance, except that entries level at the top share the first place.
function sharedFirst(adjusted: readonly number[]): readonly number[] {
  const best = Math.max(...adjusted);
  const level = adjusted.map((mean) => best - mean <= ROUNDING * Math.max(1, Math.abs(best)) * 1000);
  const leaders = level.filter(Boolean).length;
  return level.map((isLevel) => (isLevel ? 1 / leaders : 0));
}

function standardDeviation(values: readonly number[]): number | null {
  if (values.length < 2) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}
