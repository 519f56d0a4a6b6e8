import type { Order, OrderItem } from "./order";

/** What an order comes to, in the smallest unit of its currency. */
export interface OrderTotals {
  readonly cost: number;
  /** Each buying the cheapest packs alone. */
  readonly alone: number;
  readonly saving: number;
  /** Items that somebody needs and nobody offers yet: the cost is too low by these. */
  readonly withoutOffer: readonly string[];
}

export interface MemberTotal {
  readonly userId: string;
  readonly name: string;
  readonly cost: number;
  readonly alone: number;
}

export function orderTotals(items: readonly OrderItem[]): OrderTotals {
  const priced = items.filter(({ purchase }) => purchase !== null);
  const cost = priced.reduce((sum, item) => sum + costOf(item), 0);
  const ordered = priced.reduce((sum, { purchase }) => sum + (purchase?.cost ?? 0), 0);
  const alone = priced.reduce((sum, item) => sum + (item.alone ?? 0), 0);
  const withoutOffer = items.filter(({ amount, purchase }) => amount > 0 && purchase === null).map(({ name }) => name);
  return { cost, alone, saving: alone - ordered, withoutOffer };
}

/** What each member pays, by name. */
export function memberTotals({ items }: Pick<Order, "items">): readonly MemberTotal[] {
  const totals = new Map<string, MemberTotal>();
  for (const { userId, userName: name, cost, alone } of items.flatMap(({ shares }) => shares)) {
    const so = totals.get(userId) ?? { userId, name, cost: 0, alone: 0 };
    totals.set(userId, { ...so, cost: so.cost + (cost ?? 0), alone: so.alone + (alone ?? 0) });
  }
  return [...totals.values()].sort((a, b) => a.name.localeCompare(b.name, "en"));
}

function costOf({ paid, purchase }: OrderItem): number {
  return paid ?? purchase?.cost ?? 0;
}
