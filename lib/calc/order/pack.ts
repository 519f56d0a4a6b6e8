/** A pack that a supplier offers; the price of a larger amount is simply another pack. */
export interface Pack {
  /** Whole grams, millilitres or pieces. */
  readonly size: number;
  /** In the smallest unit of the currency. */
  readonly price: number;
}

/**
 * Finds the pack with the lowest price for its amount; of equal ones the largest, then the first.
 *
 * @returns Its place in the list.
 */
export function bestPack(packs: readonly Pack[]): number {
  let best = 0;
  packs.forEach((pack, place) => {
    const held = packs[best] ?? pack;
    // Compared as products, because quotients of whole numbers round.
    const difference = pack.price * held.size - held.price * pack.size;
    if (difference < 0 || (difference === 0 && pack.size > held.size)) best = place;
  });
  return best;
}

/**
 * Finds the greatest common divisor.
 *
 * @returns The largest whole number that divides both.
 */
export function commonDivisor(a: number, b: number): number {
  let [larger, smaller] = [a, b];
  while (smaller > 0) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}
