import { commonDivisor, type Pack } from "./pack";

/**
 * Bounds how much all packs but the best can hold in a cheapest purchase, so that the search ends.
 *
 * With s and p the size and price of the best pack, three reasons bound the number of another kind (size t, price q):
 * s / gcd(s, t) of them hold exactly as much as some best packs that cost no more and are fewer or cheaper; each pays
 * (q s − p t) / s more than its amount costs in best packs, and all together less than the one best pack which rounding up
 * may waste; and no pack is bought that could be left out.
 *
 * @param a.needed - Amount to cover.
 * @param a.best - The pack with the lowest price for its amount, the largest of equal ones.
 * @param a.others - The other packs.
 * @returns Largest amount in other packs that needs to be looked at.
 */
export function packReach({
  needed,
  best,
  others,
}: {
  readonly needed: number;
  readonly best: Pack;
  readonly others: readonly Pack[];
}): number {
  const together = others.reduce((sum, { size, price }) => {
    const surplus = price * best.size - best.price * size;
    const byMoney = surplus > 0 ? Math.floor((best.size * best.price) / surplus) : Infinity;
    const byExchange = best.size / commonDivisor(best.size, size) - 1;
    const byNeed = Math.ceil(needed / size);
    return sum + size * Math.min(byMoney, byExchange, byNeed);
  }, 0);
  const largest = others.reduce((most, { size }) => Math.max(most, size), 0);
  return Math.min(together, needed + largest - 1);
}
