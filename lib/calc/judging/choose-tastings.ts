import type { SeededRandom } from "./seeded-random";
import { shuffle } from "./shuffle";

const MOST_PASSES = 6;

/**
 * Shares entries out among judges who cannot taste all of them.
 *
 * Each judge takes the entries tasted least so far and, among those, the ones least often seen beside what he or she has
 * already; then pairs of judges exchange entries while that makes the pairs of entries more even.
 *
 * @param a.limit - Entries that a judge tastes, fewer than there are.
 * @returns For each judge the entries. Numbers of tastings differ by at most one.
 */
export function chooseTastings(a: {
  readonly entries: number;
  readonly judges: number;
  readonly limit: number;
  readonly random: SeededRandom;
}): readonly (readonly number[])[] {
  const all = Array.from({ length: a.entries }, (_, entry) => entry);
  const tastings = new Array<number>(a.entries).fill(0);
  const together = all.map(() => new Array<number>(a.entries).fill(0));
  const sets = Array.from({ length: a.judges }, () => {
    const candidates = shuffle(all, a.random);
    const set: number[] = [];
    while (set.length < a.limit) {
      const entry = leastTasted(candidates, set, tastings, together);
      for (const other of set) count(together, entry, other, 1);
      tastings[entry] = (tastings[entry] ?? 0) + 1;
      set.push(entry);
    }
    return set;
  });
  evenOut(sets, together);
  return sets;
}

type Pairs = readonly number[][];

const seen = (together: Pairs, entry: number, set: readonly number[]): number =>
  set.reduce((sum, other) => sum + (together[entry]?.[other] ?? 0), 0);

function count(together: Pairs, one: number, other: number, by: number): void {
  for (const [i, j] of [
    [one, other],
    [other, one],
  ] as const) {
    const row = together[i];
    if (row !== undefined) row[j] = (row[j] ?? 0) + by;
  }
}

function leastTasted(
  candidates: readonly number[],
  set: readonly number[],
  tastings: readonly number[],
  together: Pairs,
): number {
  let best = { entry: -1, tasted: Infinity, pairs: Infinity };
  for (const entry of candidates) {
    if (set.includes(entry)) continue;
    const tasted = tastings[entry] ?? 0;
    if (tasted > best.tasted) continue;
    const pairs = seen(together, entry, set);
    if (tasted < best.tasted || pairs < best.pairs) best = { entry, tasted, pairs };
  }
  return best.entry;
}

// Exchanges keep the number of tastings and lower the sum of squares of the pairs, so they come to an end.
function evenOut(sets: readonly number[][], together: Pairs): void {
  for (let pass = 0, better = true; better && pass < MOST_PASSES; pass++) {
    better = false;
    for (const [judge, set] of sets.entries()) {
      for (const other of sets.slice(judge + 1)) if (exchange(set, other, together)) better = true;
    }
  }
}

function exchange(set: number[], other: number[], together: Pairs): boolean {
  let exchanged = false;
  for (const [i, mine] of set.entries()) {
    if (other.includes(mine)) continue;
    const without = set.filter((entry) => entry !== mine);
    const kept = seen(together, mine, without);
    for (const [j, theirs] of other.entries()) {
      if (set.includes(theirs)) continue;
      const withoutTheirs = other.filter((entry) => entry !== theirs);
      // A pair taken away lowers the sum of squares by 2c − 1, one added raises it by 2c + 1.
      const saved = kept + seen(together, theirs, withoutTheirs);
      const added = seen(together, theirs, without) + seen(together, mine, withoutTheirs);
      if (added + without.length + withoutTheirs.length >= saved) continue;
      for (const entry of without) {
        count(together, mine, entry, -1);
        count(together, theirs, entry, 1);
      }
      for (const entry of withoutTheirs) {
        count(together, theirs, entry, -1);
        count(together, mine, entry, 1);
      }
      set[i] = theirs;
      other[j] = mine;
      exchanged = true;
      break;
    }
  }
  return exchanged;
}
