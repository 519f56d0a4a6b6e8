import "server-only";
import { combinedPurchase, ORDER_RANGE, shareExactly } from "@/lib/calc/order";
import type { OrderItem, OrderOffer, OrderPurchase, OrderShare } from "@/lib/model/order/order";
import type { MemberNeed, NeedSource, ThingNeeds } from "@/lib/model/order/order-needs";
import type { OrderThing } from "@/lib/model/order/order-words";
import { itemId } from "./item-id";
import { thingOf, type ItemRow, type RoundRow } from "./round-row";

type NameOf = (userId: string) => string;

/** A share before its price is known. */
type Unpriced = Omit<OrderShare, "cost" | "alone">;

/** The items of an open order: what everybody needs now, at the prices of now. */
export function openItems(round: RoundRow, needs: readonly ThingNeeds[], nameOf: NameOf): readonly OrderItem[] {
  const rows = new Map(round.items.map((row) => [row.id, row]));
  const needed = needs.map(({ thing, members }) => {
    const id = itemId(round.id, thing);
    const row = rows.get(id);
    rows.delete(id);
    return openItem({ id, thing, row, members, nameOf });
  });
  const unneeded = [...rows.values()].map((row) =>
    openItem({ id: row.id, thing: thingOf(row), row, members: [], nameOf }),
  );
  return [...needed, ...unneeded].sort(byKindAndName);
}

function openItem(a: {
  readonly id: string;
  readonly thing: OrderThing;
  readonly row: ItemRow | undefined;
  readonly members: readonly MemberNeed[];
  readonly nameOf: NameOf;
}): OrderItem {
  const { id, thing, row, nameOf } = a;
  const offers = (row?.offers ?? []).map(toOffer);
  const taker = row?.leftOverTo ?? null;
  const isBought = a.members.some(({ amount }) => amount > 0);
  const members =
    taker === null || !isBought || a.members.some(({ userId }) => userId === taker)
      ? a.members
      : [...a.members, needsNothing(taker)];
  const total = members.reduce((sum, { amount }) => sum + amount, 0);
  const bought =
    offers.length === 0 || total === 0 || total > ORDER_RANGE.amount.max
      ? null
      : combinedPurchase({
          needs: members.map(({ amount }) => amount),
          packs: offers.map(({ size, priceMinor }) => ({ size, price: priceMinor })),
          takesLeftOver: taker === null ? null : members.findIndex(({ userId }) => userId === taker),
        });
  const shares = members.map((member, i): OrderShare => {
    const extra = member.userId === taker ? (bought?.purchase.leftOver ?? 0) : 0;
    return {
      ...member,
      userName: nameOf(member.userId),
      extra,
      amount: member.amount + extra,
      cost: bought?.shares[i] ?? null,
      alone: bought?.alone[i] ?? null,
      allotted: null,
      handed: null,
      lotId: null,
      lockVersion: 0,
    };
  });
  const purchase = bought?.purchase ?? null;
  return { id, ...thing, ...keptOf(row, nameOf), offers, purchase, ...summed(shares, bought?.alone ?? null) };
}

function needsNothing(userId: string): MemberNeed {
  return { userId, sources: [], needed: 0, onHand: 0, wanted: 0, amount: 0 };
}

/** The items of an order from its lock on: as they were kept. */
export function lockedItems(round: RoundRow, nameOf: NameOf): readonly OrderItem[] {
  return round.items
    .filter(({ shares }) => shares.length > 0)
    .map((row) => lockedItem(row, nameOf))
    .sort(byKindAndName);
}

function lockedItem(row: ItemRow, nameOf: NameOf): OrderItem {
  const offers = row.offers.map(toOffer);
  const unpriced = row.shares.map((share) => toShare(share, nameOf));
  const kept = keptOf(row, nameOf);
  if (offers.length === 0) {
    const shares = unpriced.map((share) => ({ ...share, cost: null, alone: null }));
    return { id: row.id, ...thingOf(row), ...kept, offers, purchase: null, ...summed(shares, null) };
  }
  const purchase = purchaseOf(row, unpriced);
  const weights = unpriced.map(({ allotted, amount }) => allotted ?? amount);
  // Nothing came: who ordered most, pays most of what was charged for it.
  const paidBy = weights.some((weight) => weight > 0) ? weights : unpriced.map(({ amount }) => amount);
  const costs = shareExactly({ total: kept.paid ?? purchase.cost, shares: paidBy });
  const { alone } = combinedPurchase({
    needs: unpriced.map(({ amount, extra }) => amount - extra),
    packs: offers.map(({ size, priceMinor }) => ({ size, price: priceMinor })),
    takesLeftOver: null,
  });
  const shares = unpriced.map((share, i) => ({ ...share, cost: costs[i] ?? null, alone: alone[i] ?? null }));
  return { id: row.id, ...thingOf(row), ...kept, offers, purchase, ...summed(shares, alone) };
}

function purchaseOf(row: ItemRow, shares: readonly Unpriced[]): OrderPurchase {
  const counts = row.offers.map(({ count }) => count ?? 0);
  const sumOf = (of: (offer: ItemRow["offers"][number]) => number): number =>
    row.offers.reduce((sum, offer) => sum + (offer.count ?? 0) * of(offer), 0);
  const amount = sumOf(({ size }) => size);
  const needed = shares.reduce((sum, share) => sum + share.amount - share.extra, 0);
  return { counts, cost: sumOf(({ priceMinor }) => Number(priceMinor)), amount, leftOver: amount - needed };
}

function summed(
  shares: readonly OrderShare[],
  alone: readonly number[] | null,
): Pick<OrderItem, "shares" | "amount" | "alone"> {
  return {
    shares: shares.toSorted((a, b) => a.userName.localeCompare(b.userName, "en") || (a.userId < b.userId ? -1 : 1)),
    amount: shares.reduce((sum, { amount, extra }) => sum + amount - extra, 0),
    alone: alone === null ? null : alone.reduce((sum, cost) => sum + cost, 0),
  };
}

function keptOf(
  row: ItemRow | undefined,
  nameOf: NameOf,
): Pick<OrderItem, "cellsPerPiece" | "leftOverTo" | "received" | "paid" | "lockVersion"> {
  const taker = row?.leftOverTo ?? null;
  const paid = row?.paidMinor ?? null;
  return {
    cellsPerPiece: row?.cellsPerPiece ?? null,
    leftOverTo: taker === null ? null : { userId: taker, name: nameOf(taker) },
    received: row?.receivedAmount ?? null,
    paid: paid === null ? null : Number(paid),
    lockVersion: row?.lockVersion ?? 0,
  };
}

function toOffer({ id, size, priceMinor, note, lockVersion }: ItemRow["offers"][number]): OrderOffer {
  return { id, size, priceMinor: Number(priceMinor), note, lockVersion };
}

function toShare(row: ItemRow["shares"][number], nameOf: NameOf): Unpriced {
  const { userId, needed, onHand, wanted, extra, amount, allotted, handed, handedBy, handedAt, lotId, lockVersion } =
    row;
  // Nobody but the lock writes this column.
  const sources = row.sources as unknown as readonly NeedSource[];
  return {
    ...{
      userId,
      userName: nameOf(userId),
      sources,
      needed,
      onHand,
      wanted,
      extra,
      amount,
      allotted,
      lotId,
      lockVersion,
    },
    handed:
      handed === null || handedBy === null || handedAt === null
        ? null
        : { amount: handed, byName: nameOf(handedBy), at: handedAt },
  };
}

const KIND_ORDER: readonly string[] = ["fermentable", "hop", "yeast", "salt", "acid", "other"];

function byKindAndName(a: OrderItem, b: OrderItem): number {
  return KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind) || a.name.localeCompare(b.name, "en");
}
