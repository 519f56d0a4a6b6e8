import { combinedPurchase } from "@/lib/calc/order";
import type { LateSide, OrderItem, OrderShare } from "./order";

interface Wisher {
  readonly userId: string;
  readonly userName: string;
  /** Wanted beside the sheets in place of what was wanted at the lock. */
  readonly amount: number;
}

/** A share as it would be kept, with what it costs. */
export type LateShare = Pick<
  OrderShare,
  "userId" | "userName" | "needed" | "onHand" | "wanted" | "extra" | "amount" | "cost"
>;

/** What a late wish would make of one item of a locked order. */
export interface LatePurchase {
  readonly before: LateSide;
  readonly after: LateSide;
  /** What everybody would get; a share of nothing is gone. */
  readonly shares: readonly LateShare[];
}

/**
 * One item of a locked order with one wish changed. Everybody else's needs stay as they were locked; packs, what is left over and
 * what each pays follow from the sum. null where the item is not bought.
 */
export function lateDifference(item: OrderItem, wisher: Wisher): LatePurchase | null {
  const { offers, purchase, leftOverTo } = item;
  if (purchase === null) return null;
  const needing = withShare(wishing(item.shares, wisher), leftOverTo && { ...leftOverTo, userName: leftOverTo.name });
  const taker = leftOverTo === null ? -1 : needing.findIndex(({ userId }) => userId === leftOverTo.userId);
  const bought = combinedPurchase({
    needs: needing.map(needOf),
    packs: offers.map(({ size, priceMinor }) => ({ size, price: priceMinor })),
    takesLeftOver: taker === -1 ? null : taker,
  });
  const shares = needing
    .map((share, i): LateShare => {
      const extra = i === taker ? bought.purchase.leftOver : 0;
      return { ...share, extra, amount: needOf(share) + extra, cost: bought.shares[i] ?? null };
    })
    .filter(({ amount }) => amount > 0);
  return {
    before: { amount: item.amount, purchase, parts: item.shares.map(toPart) },
    after: { amount: bought.needed, purchase: bought.purchase, parts: shares.map(toPart) },
    shares,
  };
}

function needOf({ needed, onHand, wanted }: Pick<OrderShare, "needed" | "onHand" | "wanted">): number {
  return needed - onHand + wanted;
}

function wishing(shares: readonly LateShare[], { amount: wanted, ...who }: Wisher): readonly LateShare[] {
  return withShare(shares, who).map((share) => (share.userId === who.userId ? { ...share, wanted } : share));
}

/** The same with a share of this member, of nothing where there was none. */
function withShare(
  shares: readonly LateShare[],
  who: { readonly userId: string; readonly userName: string } | null,
): readonly LateShare[] {
  if (who === null || shares.some(({ userId }) => userId === who.userId)) return shares;
  const { userId, userName } = who;
  return [...shares, { userId, userName, needed: 0, onHand: 0, wanted: 0, extra: 0, amount: 0, cost: 0 }];
}

function toPart({ userId, userName, amount, cost }: LateShare): LateSide["parts"][number] {
  return { userId, userName, amount, cost };
}
