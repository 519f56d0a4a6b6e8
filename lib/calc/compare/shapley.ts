/**
 * Divides the difference between two states among the things that changed, so that the parts add up to it.
 *
 * Each part is what its change makes, averaged over all orders in which the changes can be made one after the other: no
 * order is right, and every single one would favour those that come last.
 *
 * @param count - How many things changed.
 * @param valuesOf - The numbers with some of the changes made; bit i of the mask stands for the i-th.
 * @returns For each change its part of each number; summed over the changes, all changed − none changed.
 * @source Shapley 1953 (docs/sources.md#shapley-1953)
 */
export function shapleyParts(count: number, valuesOf: (mask: number) => readonly number[]): number[][] {
  const values = Array.from({ length: 1 << count }, (_, mask) => valuesOf(mask));
  const share = sharesBySize(count);
  return Array.from({ length: count }, (_, i) => {
    const numbers = values[0] ?? [];
    return numbers.map((_unused, k) => {
      let part = 0;
      for (let mask = 0; mask < values.length; mask++) {
        if (((mask >> i) & 1) === 1) continue;
        const made = (values[mask | (1 << i)]?.[k] ?? 0) - (values[mask]?.[k] ?? 0);
        part += (share[sizeOf(mask)] ?? 0) * made;
      }
      return part;
    });
  });
}

/** In how many of all orders just these changes come before: s! (n − s − 1)! / n!. */
function sharesBySize(count: number): number[] {
  const factorial = (n: number): number => (n <= 1 ? 1 : n * factorial(n - 1));
  return Array.from({ length: count }, (_, s) => (factorial(s) * factorial(count - s - 1)) / factorial(count));
}

function sizeOf(mask: number): number {
  let size = 0;
  for (let rest = mask; rest > 0; rest >>= 1) size += rest & 1;
  return size;
}
