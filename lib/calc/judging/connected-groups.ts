/** Judges and entries, counted from zero, that scores tie together. */
export interface ConnectedGroup {
  readonly judges: readonly number[];
  readonly entries: readonly number[];
}

/**
 * Sorts judges and entries into groups that no score joins to each other.
 *
 * @param tasted - For each judge the entries that he or she scored.
 * @param entries - Number of entries, those included that nobody scored.
 * @returns One group when everything can be compared; a judge without scores or an entry without judges is a group alone.
 */
export function connectedGroups(tasted: readonly (readonly number[])[], entries: number): readonly ConnectedGroup[] {
  const judgesOf = Array.from({ length: entries }, (): number[] => []);
  tasted.forEach((row, judge) => {
    for (const entry of row) judgesOf[entry]?.push(judge);
  });
  const seenJudges = new Set<number>();
  const seenEntries = new Set<number>();
  const groups: ConnectedGroup[] = [];

  // Sets keep growing while they are walked, and every member is visited once.
  function grow(judges: Set<number>, fromEntries: Set<number>): void {
    const walked = { judges: 0, entries: 0 };
    while (walked.judges < judges.size || walked.entries < fromEntries.size) {
      for (const judge of [...judges].slice(walked.judges))
        for (const entry of tasted[judge] ?? []) fromEntries.add(entry);
      walked.judges = judges.size;
      for (const entry of [...fromEntries].slice(walked.entries))
        for (const judge of judgesOf[entry] ?? []) judges.add(judge);
      walked.entries = fromEntries.size;
    }
    for (const judge of judges) seenJudges.add(judge);
    for (const entry of fromEntries) seenEntries.add(entry);
    groups.push({ judges: ascending(judges), entries: ascending(fromEntries) });
  }

  for (let judge = 0; judge < tasted.length; judge++) if (!seenJudges.has(judge)) grow(new Set([judge]), new Set());
  for (let entry = 0; entry < entries; entry++) if (!seenEntries.has(entry)) grow(new Set(), new Set([entry]));
  return groups;
}

const ascending = (numbers: ReadonlySet<number>): readonly number[] => [...numbers].sort((a, b) => a - b);
