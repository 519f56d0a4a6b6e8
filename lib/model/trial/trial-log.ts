import type { TrialEntry, TrialPart } from "./trial-entry";

/** Several entries of one reading: the last is what counts, those before are its history. */
export interface CurrentEntry<E extends TrialEntry = TrialEntry> {
  readonly entry: E;
  readonly before: readonly TrialEntry[];
}

/** What was stated and read in one run of a part. */
export interface TrialRun {
  readonly part: TrialPart;
  readonly run: number;
  readonly conditions: CurrentEntry | null;
  /** By time; without what was taken back. */
  readonly readings: readonly CurrentEntry[];
}

/**
 * Reads the entries of a trial, in whatever order they came.
 *
 * Entries that lead back to one belong together. The one made last counts, by its identifier, which grows with time:
 * two phones come to the same, whoever delivers first.
 */
export function trialRuns(entries: readonly TrialEntry[]): readonly TrialRun[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const chains = grouped([...byId.values()], (entry) => rootOf(entry, byId));
  const current = [...chains.values()].flatMap((chain): CurrentEntry[] => {
    const inOrder = chain.toSorted((a, b) => (a.id < b.id ? -1 : 1));
    const entry = inOrder.at(-1);
    return entry === undefined || entry.kind === "void" ? [] : [{ entry, before: inOrder.slice(0, -1) }];
  });
  const runs = grouped(current, ({ entry }) => `${entry.part} ${String(entry.run)}`);
  return [...runs.values()].flatMap((of) => {
    const [first] = of;
    return first === undefined ? [] : [runOf(first.entry, of)];
  });
}

function runOf({ part, run }: TrialEntry, of: readonly CurrentEntry[]): TrialRun {
  const stated = of.filter(({ entry }) => entry.kind === "conditions");
  return {
    part,
    run,
    // Two phones may both have stated them; the later statement counts.
    conditions: stated.toSorted((a, b) => (a.entry.id < b.entry.id ? -1 : 1)).at(-1) ?? null,
    readings: of
      .filter(({ entry }) => entry.kind !== "conditions")
      .toSorted((a, b) => timeOf(a.entry) - timeOf(b.entry) || (a.entry.id < b.entry.id ? -1 : 1)),
  };
}

export const timeOf = ({ occurredAt }: TrialEntry): number => Date.parse(occurredAt);

function grouped<T>(values: readonly T[], keyOf: (value: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const value of values) {
    const group = groups.get(keyOf(value));
    if (group === undefined) groups.set(keyOf(value), [value]);
    else group.push(value);
  }
  return groups;
}

function rootOf(entry: TrialEntry, byId: ReadonlyMap<string, TrialEntry>): string {
  const seen = new Set<string>();
  let here = entry;
  while (here.replaces !== null && !seen.has(here.id)) {
    seen.add(here.id);
    const before = byId.get(here.replaces);
    if (before === undefined) return here.replaces;
    here = before;
  }
  return here.id;
}
