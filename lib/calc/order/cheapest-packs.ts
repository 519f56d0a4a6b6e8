import { ORDER_RANGE, requireWhole } from "./order-range";
import { bestPack, commonDivisor, type Pack } from "./pack";
import { packReach } from "./pack-reach";

/** Which packs are bought. */
export interface PackPurchase {
  /** How many of each pack, in the order of the offers. */
  readonly counts: readonly number[];
  readonly cost: number;
  readonly amount: number;
  /** What is bought beyond the need. */
  readonly leftOver: number;
}

/**
 * Finds the packs that cover an amount at least cost, exactly; among equally dear ones those that leave the least over, and
 * then the fewest packs.
 *
 * The best pack by price for its amount is bought for all but a bounded remainder; what other packs can hold up to that
 * bound is found by dynamic programming over the whole amounts, in steps of the greatest common divisor of the sizes. So
 * nothing is left out and nothing is guessed.
 *
 * @param a.needed - Amount to cover, whole grams, millilitres or pieces.
 * @param a.packs - The packs offered, each as often as wanted.
 * @returns How many of each pack, their cost, amount and what is left over.
 * @validRange Amount from 0 to 5 000 000; 1 to 20 packs of 1 to 5 000 000 at 0 to 100 000 000.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 * @source Gilmore and Gomory 1966 (docs/sources.md#gilmore-gomory-1966); docs/worked-examples.md#packs
 * @example
 * cheapestPacks({ needed: 32_000, packs: [{ size: 25_000, price: 3000 }, { size: 5000, price: 800 }] });
 * // { counts: [1, 2], cost: 4600, amount: 35_000, leftOver: 3000 }
 */
export function cheapestPacks({
  needed,
  packs,
}: {
  readonly needed: number;
  readonly packs: readonly Pack[];
}): PackPurchase {
  requireWhole("amount needed", needed, ORDER_RANGE.amount);
  requireWhole("number of packs offered", packs.length, ORDER_RANGE.kinds);
  for (const { size, price } of packs) {
    requireWhole("size of a pack", size, ORDER_RANGE.size);
    requireWhole("price of a pack", price, ORDER_RANGE.price);
  }
  const step = packs.reduce((divisor, { size }) => commonDivisor(divisor, size), 0);
  const inSteps = packs.map(({ size, price }) => ({ size: size / step, price }));
  const counts = cheapestCounts(Math.ceil(needed / step), inSteps);
  const sumOf = (of: keyof Pack): number => packs.reduce((sum, pack, i) => sum + pack[of] * (counts[i] ?? 0), 0);
  const amount = sumOf("size");
  return { counts, cost: sumOf("price"), amount, leftOver: amount - needed };
}

function cheapestCounts(needed: number, packs: readonly Pack[]): readonly number[] {
  const bestPlace = bestPack(packs);
  const best = packs[bestPlace];
  if (best === undefined || needed === 0) return packs.map(() => 0);
  const others = packs.flatMap((pack, place) => (place === bestPlace ? [] : [{ ...pack, place }]));
  const table = cheapestAmounts(packReach({ needed, best, others }), others);
  let chosen = { amount: 0, bests: Infinity, cost: Infinity, over: Infinity, packs: Infinity };
  table.cost.forEach((otherCost, amount) => {
    if (otherCost === Infinity) return;
    const bests = Math.max(0, Math.ceil((needed - amount) / best.size));
    const cost = otherCost + bests * best.price;
    const over = amount + bests * best.size - needed;
    const all = (table.packs[amount] ?? 0) + bests;
    const difference = cost - chosen.cost || over - chosen.over || all - chosen.packs;
    if (difference < 0) chosen = { amount, bests, cost, over, packs: all };
  });
  const counts = packs.map((_, place) => (place === bestPlace ? chosen.bests : 0));
  for (let amount = chosen.amount; amount > 0;) {
    const last = others[table.last[amount] ?? 0];
    if (last === undefined) break;
    counts[last.place] = (counts[last.place] ?? 0) + 1;
    amount -= last.size;
  }
  return counts;
}

/** For each amount that some packs hold exactly: least cost, then fewest packs, and the pack put in last. */
interface CheapestAmounts {
  readonly cost: Float64Array;
  readonly packs: Uint32Array;
  readonly last: Uint8Array;
}

function cheapestAmounts(reach: number, packs: readonly Pack[]): CheapestAmounts {
  const cost = new Float64Array(reach + 1).fill(Infinity);
  const count = new Uint32Array(reach + 1);
  const last = new Uint8Array(reach + 1);
  cost[0] = 0;
  for (let amount = 1; amount <= reach; amount++) {
    packs.forEach(({ size, price }, place) => {
      if (size > amount) return;
      const withIt = (cost[amount - size] ?? Infinity) + price;
      const packsWithIt = (count[amount - size] ?? 0) + 1;
      const held = cost[amount] ?? Infinity;
      if (withIt < held || (withIt === held && withIt < Infinity && packsWithIt < (count[amount] ?? 0))) {
        cost[amount] = withIt;
        count[amount] = packsWithIt;
        last[amount] = place;
      }
    });
  }
  return { cost, packs: count, last };
}
