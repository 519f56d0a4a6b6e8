/** Neighbouring parts of a difference that are told from nothing, alone or together. */
export interface NamedRun<Id extends string> {
  readonly ids: readonly Id[];
  readonly value: number;
  readonly sd: number;
}

/** Less than this many of its standard uncertainties might be nothing: about one in twenty is that far by chance. */
const TOLD = 2;

interface Part<Id extends string> {
  readonly id: Id;
  readonly value: number;
}

/**
 * Picks the parts that can be told from nothing; of those that cannot, the shortest runs of neighbours whose sum can.
 *
 * @param parts - In the order of the process.
 * @param sdOf - The standard uncertainty of some of them together.
 * @returns Runs in the order of the process; none shares a part with another.
 */
export function namedRuns<Id extends string>(
  parts: readonly Part<Id>[],
  sdOf: (ids: readonly Id[]) => number,
): NamedRun<Id>[] {
  const found: { readonly start: number; readonly run: NamedRun<Id> }[] = [];
  const isTaken = parts.map(() => false);
  for (let length = 1; length <= parts.length; length++) {
    const runs = Array.from({ length: parts.length - length + 1 }, (_, start) => {
      const of = parts.slice(start, start + length);
      const ids = of.map(({ id }) => id);
      return { start, run: { ids, value: of.reduce((sum, { value }) => sum + value, 0), sd: sdOf(ids) } };
    });
    for (const each of runs.toSorted((x, y) => clearness(y.run) - clearness(x.run))) {
      const places = Array.from({ length }, (_, i) => each.start + i);
      if (clearness(each.run) <= TOLD || places.some((place) => isTaken[place] === true)) continue;
      for (const place of places) isTaken[place] = true;
      found.push(each);
    }
  }
  return found.toSorted((x, y) => x.start - y.start).map(({ run }) => run);
}

/** Rounding is no cause, however well it is known; a millionth of a degree or a litre is rounding. */
const ROUNDING = 1e-6;

function clearness({ value, sd }: { readonly value: number; readonly sd: number }): number {
  if (Math.abs(value) < ROUNDING) return 0;
  return sd > 0 ? Math.abs(value) / sd : Infinity;
}
