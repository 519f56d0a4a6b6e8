import { cheapestPacks, type PackPurchase } from "./cheapest-packs";
import { ORDER_RANGE, requireWhole } from "./order-range";
import type { Pack } from "./pack";
import { shareExactly } from "./share-exactly";

/** One thing bought together, with what each would have paid alone. */
export interface CombinedPurchase {
  /** Sum of the needs. */
  readonly needed: number;
  readonly purchase: PackPurchase;
  /** What each pays, by the amount of each; the parts add up to the cost exactly. */
  readonly shares: readonly number[];
  /** Cost of the cheapest packs that each would buy alone. */
  readonly alone: readonly number[];
  /** How much cheaper it is together; never below nothing. */
  readonly saving: number;
}

/**
 * Buys one thing for many: the cheapest packs for the sum of their needs, what each pays, and the saving against each buying
 * alone at the same prices.
 *
 * All that is bought is paid by the amounts, also what is left over. Whoever takes the left-over pays for it with their own
 * amount.
 *
 * @param a.needs - Amount that each needs, whole grams, millilitres or pieces.
 * @param a.packs - The packs offered.
 * @param a.takesLeftOver - Place in the list of who takes and pays for what is left over; null shares its cost by the needs.
 * @returns Sum, purchase, parts of the cost, cost alone and saving.
 * @validRange 1 to 500 needs of 0 to 5 000 000 with a sum up to 5 000 000; packs as for cheapestPacks.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 * @source Gilmore and Gomory 1966; Balinski and Young 1982 (docs/sources.md#balinski-young-1982)
 * @example
 * combinedPurchase({ needs: [4000, 6000], packs: [{ size: 10_000, price: 1500 }], takesLeftOver: null });
 * // { needed: 10_000, shares: [600, 900], alone: [1500, 1500], saving: 1500, … }
 */
export function combinedPurchase({
  needs,
  packs,
  takesLeftOver,
}: {
  readonly needs: readonly number[];
  readonly packs: readonly Pack[];
  readonly takesLeftOver: number | null;
}): CombinedPurchase {
  requireWhole("number of people", needs.length, ORDER_RANGE.people);
  const amounts = needs.map((need) => requireWhole("amount needed", need, ORDER_RANGE.amount));
  if (takesLeftOver !== null) {
    requireWhole("place of who takes the left-over", takesLeftOver, { unit: "", min: 0, max: needs.length - 1 });
  }
  const needed = amounts.reduce((sum, amount) => sum + amount, 0);
  const purchase = cheapestPacks({ needed, packs });
  const alone = amounts.map((amount) => cheapestPacks({ needed: amount, packs }).cost);
  const paidFor = amounts.map((amount, place) => (place === takesLeftOver ? amount + purchase.leftOver : amount));
  return {
    needed,
    purchase,
    shares: shareExactly({ total: purchase.cost, shares: paidFor }),
    alone,
    saving: alone.reduce((sum, cost) => sum + cost, 0) - purchase.cost,
  };
}
