import type { Order, OrderItem, OrderShare } from "@/lib/model/order/order";

/** One line of a weight list. */
export interface Weighing {
  readonly item: OrderItem;
  readonly share: OrderShare;
  /** Allotted of what came; what was ordered until it is known. */
  readonly amount: number;
}

/** What one member gets. */
export interface WeightList {
  readonly userId: string;
  readonly name: string;
  readonly weighings: readonly Weighing[];
}

/** A list for each member, by name. What nobody offered was not bought, and is not handed out. */
export function weightLists({ items }: Pick<Order, "items">): readonly WeightList[] {
  const lists = new Map<string, WeightList>();
  for (const item of items.filter(({ purchase }) => purchase !== null)) {
    for (const share of item.shares) {
      const list = lists.get(share.userId) ?? { userId: share.userId, name: share.userName, weighings: [] };
      const weighing = { item, share, amount: share.allotted ?? share.amount };
      lists.set(share.userId, { ...list, weighings: [...list.weighings, weighing] });
    }
  }
  return [...lists.values()].sort((a, b) => a.name.localeCompare(b.name, "en"));
}
