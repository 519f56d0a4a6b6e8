/** Rows of a flight by their entry, found once: a large flight has thousands of sheets. */
export function byEntry<R extends { readonly entryNo: number }>(rows: readonly R[]): (entryNo: number) => readonly R[] {
  const found = new Map<number, R[]>();
  for (const row of rows) {
    const own = found.get(row.entryNo);
    if (own === undefined) found.set(row.entryNo, [row]);
    else own.push(row);
  }
  return (entryNo) => found.get(entryNo) ?? [];
}
