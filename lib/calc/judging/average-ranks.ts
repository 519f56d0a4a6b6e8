/** Ranks of a judge's scores, the lowest first. */
export interface Ranking {
  readonly ranks: readonly number[];
  /** Σ(t³ − t) over the groups of t equal scores. */
  readonly ties: number;
}

/**
 * Ranks scores from 1 upward and gives equal ones the mean of the ranks that they share.
 *
 * @returns Ranks in the order of the scores, and the term that corrects for ties.
 * @source Kendall and Babington Smith 1939 (docs/sources.md#kendall-1939)
 */
export function averageRanks(scores: readonly number[]): Ranking {
  const order = scores.map((score, entry) => ({ score, entry })).sort((a, b) => a.score - b.score);
  const ranks = new Array<number>(scores.length).fill(0);
  let ties = 0;
  for (let first = 0; first < order.length;) {
    let next = first;
    while (next < order.length && order[next]?.score === order[first]?.score) next++;
    const tied = next - first;
    ties += tied ** 3 - tied;
    for (const { entry } of order.slice(first, next)) ranks[entry] = (first + 1 + next) / 2;
    first = next;
  }
  return { ranks, ties };
}
