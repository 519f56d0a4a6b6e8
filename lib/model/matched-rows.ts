/** A row before and after; null where one side has none. */
export interface MatchedRow<R> {
  readonly before: R | null;
  readonly after: R | null;
}

/**
 * Pairs the rows of two lists: those that agree in the first likeness, of the rest those that agree in the second, and so
 * on. Of several alike, the first goes with the first.
 *
 * @param likenesses - From the closest to the loosest; each gives what two rows must have in common.
 */
export function matchedRows<R>(
  before: readonly R[],
  after: readonly R[],
  likenesses: readonly ((row: R) => string)[],
): readonly MatchedRow<R>[] {
  const partnerOf = new Map<R, R>();
  const left = new Set(before);
  for (const likeness of likenesses) {
    for (const row of after) {
      if (partnerOf.has(row)) continue;
      const partner = [...left].find((other) => likeness(other) === likeness(row));
      if (partner === undefined) continue;
      partnerOf.set(row, partner);
      left.delete(partner);
    }
  }
  return [
    ...after.map((row) => ({ before: partnerOf.get(row) ?? null, after: row })),
    ...[...left].map((row) => ({ before: row, after: null })),
  ];
}
