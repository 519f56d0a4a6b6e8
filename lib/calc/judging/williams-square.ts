/**
 * Lays out serving orders in which every entry stands equally often in each place and after each other entry.
 *
 * Neighbours in the zigzag 0, 1, n−1, 2, n−2, … differ by every step once, so its shifts hold every ordered pair once. For
 * an odd number the steps come in one direction only, and the same orders backwards supply the other.
 *
 * @param entries - At least 1.
 * @returns n orders for an even number of entries, 2n for an odd one, of entries counted from zero.
 * @source Williams 1949 (docs/sources.md#williams-1949)
 */
export function williamsSquare(entries: number): readonly (readonly number[])[] {
  const zigzag = Array.from({ length: entries }, (_, place) =>
    place % 2 === 1 ? (place + 1) / 2 : (entries - place / 2) % entries,
  );
  const square = zigzag.map((_, shift) => zigzag.map((entry) => (entry + shift) % entries));
  if (entries === 1 || entries % 2 === 0) return square;
  return [...square, ...square.map((order) => [...order].reverse())];
}
