import { F_RANGE, fUpperTail } from "../statistics";
import { solveUpper } from "../numerics/cholesky";
import { entryCovariance, type JudgeModel } from "./judge-model";
import type { ScoredTable } from "./scored-table";
import { seededRandom } from "./seeded-random";

/** Each is used twice, with either sign. */
const DRAWS = 3000;

/** An entry that beats the leader alone more rarely than this would hardly show in the draws. */
const HOPELESS = 1e-6;

interface Fit {
  readonly table: ScoredTable;
  readonly model: JudgeModel;
  /** Scatter that the model leaves, above zero, and its degrees of freedom. */
  readonly residualSd: number;
  readonly df: number;
}

/** An entry that may be first, and how to add up the errors of its judges. */
interface Candidate {
  readonly entry: number;
  readonly adjusted: number;
  readonly scores: number;
  /** The judges who tasted it, or those who did not where they are fewer. */
  readonly judges: readonly number[];
  readonly areAbsent: boolean;
}

/**
 * Finds how probable it is that each entry is the best of all, given the scores.
 *
 * Draws judges, entries and the residual variance from what the scores leave open (flat prior) and counts who comes
 * first. The judges' errors are drawn once for all entries, because entries with the same judges share them.
 *
 * @returns For each entry a probability, off by 0.007 at most as a standard deviation; together 1.
 */
export function chancesOfFirst({ seed, ...fit }: Fit & { readonly seed: number }): readonly number[] {
  const random = seededRandom(seed);
  const candidates = candidatesOf(fit);
  const wins = new Array<number>(fit.table.entries).fill(0);
  const judges = new Float64Array(fit.table.judges);
  const errors = new Float64Array(candidates.length);
  for (let draw = 0; draw < DRAWS; draw++) {
    const sd = fit.residualSd / Math.sqrt(random.scaledChiSquared(fit.df));
    for (let judge = 0; judge < judges.length; judge++) judges[judge] = random.normal();
    solveUpper(fit.model.factor, judges);
    const all = judges.reduce((sum, error) => sum + error, 0);
    candidates.forEach((candidate, at) => {
      let sum = 0;
      for (const judge of candidate.judges) sum += judges[judge] ?? 0;
      const ofJudges = candidate.areAbsent ? all - sum : sum;
      errors[at] = sd * (random.normal() / Math.sqrt(candidate.scores) - ofJudges / candidate.scores);
    });
    for (const sign of [1, -1]) {
      const first = bestOf(candidates, errors, sign);
      wins[first] = (wins[first] ?? 0) + 1;
    }
  }
  return wins.map((count) => count / (2 * DRAWS));
}

function candidatesOf(fit: Fit): readonly Candidate[] {
  const { table, model } = fit;
  const leader = model.adjusted.indexOf(Math.max(...model.adjusted));
  const everyone = table.byJudge.map((_, judge) => judge);
  return table.byEntry.flatMap(({ judges }, entry) => {
    if (entry !== leader && chanceToBeat(fit, entry, leader) < HOPELESS) return [];
    const areAbsent = 2 * judges.length > table.judges;
    return {
      entry,
      adjusted: model.adjusted[entry] ?? 0,
      scores: judges.length,
      judges: areAbsent ? everyone.filter((judge) => !judges.includes(judge)) : judges,
      areAbsent,
    };
  });
}

// Student's t of the difference; its square is F with one degree of freedom, and half the tail is on the far side.
function chanceToBeat({ table, model, residualSd, df }: Fit, entry: number, leader: number): number {
  const variance =
    entryCovariance(table, model, entry, entry) +
    entryCovariance(table, model, leader, leader) -
    2 * entryCovariance(table, model, entry, leader);
  const behind = (model.adjusted[leader] ?? 0) - (model.adjusted[entry] ?? 0);
  const f = Math.min(F_RANGE.f.max, behind ** 2 / (variance * residualSd ** 2));
  return fUpperTail({ f, df1: 1, df2: df }) / 2;
}

function bestOf(candidates: readonly Candidate[], errors: Float64Array, sign: number): number {
  let first = 0;
  let best = -Infinity;
  for (let at = 0; at < candidates.length; at++) {
    const candidate = candidates[at];
    if (candidate === undefined) continue;
    const value = candidate.adjusted + sign * (errors[at] ?? 0);
    if (value <= best) continue;
    best = value;
    first = candidate.entry;
  }
  return first;
}
