import { solveLinear } from "../numerics";
import type { FactorProducts } from "./factor-products";
import { type Likelihood, restrictedLikelihood } from "./restricted-likelihood";

export interface Likeliest extends Likelihood {
  readonly variances: readonly number[];
}

/** The rest is never let below this share of the scatter: there the data leave no rest at all. */
export const LEAST_REST = 1e-9;

const MOST_STEPS = 200;
/** A step that promises to raise the log likelihood by less than this is the end. */
const SETTLED = 1e-13;
const SHORTEST = 1e-8;

/**
 * Finds the variances, none below 0, that make the restricted likelihood largest.
 *
 * Fisher's scoring; a variance that would fall below 0 is held there while its slope keeps it.
 *
 * @param data - Sums of products of values whose own variance is 1.
 * @param start - Variances to start from.
 * @param held - Place of a variance that is to stay as it is, where one is.
 * @param settled - Rise of the log likelihood that is not worth another step.
 * @returns Variances and their likelihood.
 * @source Searle, Casella and McCulloch 1992, section 8.3 (docs/sources.md#searle-1992)
 */
export function likeliestVariances(
  data: FactorProducts,
  start: readonly number[],
  held: number | null,
  settled: number = SETTLED,
): Likeliest {
  let here: Likeliest = { variances: start, ...restrictedLikelihood(data, start) };
  for (let step = 0; step < MOST_STEPS; step++) {
    const move = scoringStep(here, held);
    const promised = move.reduce((sum, by, i) => sum + by * (here.slopes[i] ?? 0), 0) / 2;
    if (promised <= settled) break;
    const next = uphill(data, here, move);
    if (next === null) break;
    here = next;
  }
  return here;
}

function scoringStep({ variances, slopes, information }: Likeliest, held: number | null): number[] {
  const isRest = (i: number): boolean => i === variances.length - 1;
  const least = (i: number): number => (isRest(i) ? LEAST_REST : 0);
  let free = variances.map((_, i) => i).filter((i) => i !== held);
  for (;;) {
    const solution =
      free.length === 0
        ? { ok: false as const }
        : solveLinear({
            matrix: free.map((i) => free.map((j) => information[i]?.[j] ?? 0)),
            rhs: free.map((i) => slopes[i] ?? 0),
          });
    if (!solution.ok) return variances.map(() => 0);
    const move = variances.map(() => 0);
    free.forEach((i, k) => (move[i] = solution.x[k] ?? 0));
    // A variance that stands at its least and would fall further stays there; the others step without it.
    const stays = free.filter((i) => (move[i] ?? 0) < 0 && (variances[i] ?? 0) <= least(i));
    if (stays.length === 0) return move;
    free = free.filter((i) => !stays.includes(i));
  }
}

// Shortens the step until the likelihood rises; a variance stops at its least.
function uphill(data: FactorProducts, here: Likeliest, move: readonly number[]): Likeliest | null {
  for (let share = 1; share > SHORTEST; share /= 2) {
    const variances = here.variances.map((value, i) =>
      Math.max(i === here.variances.length - 1 ? LEAST_REST : 0, value + share * (move[i] ?? 0)),
    );
    const there = { variances, ...restrictedLikelihood(data, variances) };
    if (there.logLikelihood > here.logLikelihood) return there;
  }
  return null;
}
