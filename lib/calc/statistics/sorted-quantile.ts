/**
 * Reads a share of the way through sorted values, on straight lines between them.
 *
 * @param sorted - Values by rising size, at least one.
 * @param share - 0 for the first, 1 for the last.
 * @returns The value there.
 * @source Hyndman and Fan 1996, definition 7 (docs/sources.md#hyndman-fan-1996)
 */
export function sortedQuantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const before = Math.floor(place);
  const low = sorted[before] ?? 0;
  const high = sorted[before + 1] ?? low;
  return low + (place - before) * (high - low);
}
