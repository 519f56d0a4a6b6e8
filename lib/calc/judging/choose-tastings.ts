import type { SeededRandom } from "./seeded-random";
import { shuffle } from "./shuffle";

const MOST_PASSES = 6;

/**
 * Shares entries out among judges who cannot taste all of them.
 *
 * Each judge takes the entries tasted least so far and, among those, the ones least often seen beside what he or she has
 * already; then pairs of judges exchange entries while that makes the pairs of entries more even.
 *
 * @param a.limit - Entries that a judge tastes, no more than are left to any.
 * @param a.without - For each judge the entries that he or she must not get.
 * @returns For each judge the entries. Numbers of tastings differ by at most one where nothing is withheld.
 */
export function chooseTastings(a: {
  readonly entries: number;
  readonly judges: number;
  readonly limit: number;
  readonly without: Withheld;
  readonly random: SeededRandom;
}): readonly (readonly number[])[] {
  const all = Array.from({ length: a.entries }, (_, entry) => entry);
  const tastings = new Array<number>(a.entries).fill(0);
  const together = all.map(() => new Array<number>(a.entries).fill(0));
  const sets = Array.from({ length: a.judges }, (): number[] => []);
  for (const judge of mostWithheldFirst(sets.length, a.without)) {
    const candidates = shuffle(all, a.random).filter(mayHave(a.without, judge));
    const set = sets[judge] ?? [];
    while (set.length < a.limit) {
      const entry = leastTasted(candidates, set, tastings, together);
      for (const other of set) count(together, entry, other, 1);
      tastings[entry] = (tastings[entry] ?? 0) + 1;
      set.push(entry);
    }
  }
  evenOut(sets, together, a.without);
  return sets;
}

type Withheld = readonly (readonly number[])[];
type MayHave = (entry: number) => boolean;

const mayHave =
  (without: Withheld, judge: number): MayHave =>
  (entry) =>
    !(without[judge]?.includes(entry) ?? false);

// Whoever may have the fewest chooses first, so that the others make up for it.
function mostWithheldFirst(judges: number, without: Withheld): readonly number[] {
  const withheld = (judge: number): number => without[judge]?.length ?? 0;
  return Array.from({ length: judges }, (_, judge) => judge).sort((a, b) => withheld(b) - withheld(a));
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
function evenOut(sets: readonly number[][], together: Pairs, without: Withheld): void {
  for (let pass = 0, better = true; better && pass < MOST_PASSES; pass++) {
    better = false;
    for (const [judge, set] of sets.entries()) {
      for (let other = judge + 1; other < sets.length; other++) {
        const theirs = { set: sets[other] ?? [], may: mayHave(without, other) };
        if (exchange({ set, may: mayHave(without, judge) }, theirs, together)) better = true;
      }
    }
  }
}

interface Chosen {
  readonly set: number[];
  readonly may: MayHave;
}

function exchange({ set, may }: Chosen, { set: other, may: otherMay }: Chosen, together: Pairs): boolean {
  let exchanged = false;
  for (const [i, mine] of set.entries()) {
    if (other.includes(mine) || !otherMay(mine)) continue;
    const without = set.filter((entry) => entry !== mine);
    const kept = seen(together, mine, without);
    for (const [j, theirs] of other.entries()) {
      if (set.includes(theirs) || !may(theirs)) continue;
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
