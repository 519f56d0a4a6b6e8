import type { Order, OrderItem } from "@/lib/model/order/order";
import type { OrderState } from "@/lib/model/order/order-words";
import { moveOrder } from "@/lib/server/orders/move";
import { addOffer } from "@/lib/server/orders/offers";
import { findOrder } from "@/lib/server/orders/reads";
import { handOutShare, receiveItem } from "@/lib/server/orders/receive";
import { createOrder } from "@/lib/server/orders/writes";
import type { Member } from "@/lib/server/session";

/** An order, of a shared brew where one is given. */
export async function newOrdering(organiser: Member, sharedBrewId: string | null = null): Promise<string> {
  const order = { title: "Autumn order", sharedBrewId, currency: "EUR", closesAt: null, note: "" };
  return (await createOrder(organiser, order)).id;
}

export async function orderAs(member: Member, id: string): Promise<Order> {
  const order = await findOrder(member, id);
  if (order === null) throw new Error("the test's own order is not there");
  return order;
}

export function itemOf(order: Order, name: string): OrderItem {
  const item = order.items.find((each) => each.name === name);
  if (item === undefined)
    throw new Error(`the order has no ${name}: ${order.items.map((each) => each.name).join(", ")}`);
  return item;
}

/** Offers packs of one item: size and price in the smallest units. */
export async function offerPacks(
  organiser: Member,
  a: {
    readonly orderId: string;
    readonly name: string;
    readonly packs: readonly (readonly [size: number, price: number])[];
  },
): Promise<void> {
  const { id: itemId } = itemOf(await orderAs(organiser, a.orderId), a.name);
  for (const [size, priceMinor] of a.packs)
    await addOffer(organiser, { orderId: a.orderId, itemId, size, priceMinor, note: "" });
}

/** Takes an order on as somebody who has just looked at it. */
export async function moveTo(organiser: Member, orderId: string, state: OrderState) {
  const { lockVersion, fingerprint } = await orderAs(organiser, orderId);
  return moveOrder(organiser, { orderId, state, lockVersion, fingerprint });
}

/** Receives everything as ordered, or less of what is named. */
export async function receiveAll(
  organiser: Member,
  orderId: string,
  less: Readonly<Record<string, number>> = {},
): Promise<void> {
  for (const { id: itemId, name, lockVersion, purchase } of (await orderAs(organiser, orderId)).items) {
    if (purchase === null) continue;
    const received = less[name] ?? purchase.amount;
    await receiveItem(organiser, { orderId, itemId, lockVersion, received, paidMinor: null, allotted: null });
  }
}

/** Weighs out to everybody what they are allotted. */
export async function handOutAll(organiser: Member, orderId: string): Promise<void> {
  for (const { id: itemId, shares } of (await orderAs(organiser, orderId)).items) {
    for (const { userId, lockVersion, allotted } of shares) {
      await handOutShare(organiser, { orderId, itemId, userId, lockVersion, amount: allotted });
    }
  }
}
