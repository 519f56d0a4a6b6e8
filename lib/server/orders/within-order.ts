import "server-only";
import { randomUUID } from "node:crypto";
import type { Order, OrderItem } from "@/lib/model/order/order";
import { nameKey, type OrderState, type OrderThing } from "@/lib/model/order/order-words";
import { AppError } from "../app-error";
import { inSpace, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { itemId } from "./item-id";
import { findOrder } from "./reads";
import { holdRound } from "./round-row";

/** The order of a write, for those who may order at all. */
export async function requireOrder(member: Member, orderId: string): Promise<Order> {
  requireAbility(member, "order");
  const order = await findOrder(member, orderId);
  if (order === null) throw new AppError("NOT_FOUND", "There is no such order here.");
  return order;
}

export function requireItem(order: Order, id: string): OrderItem {
  const item = order.items.find((each) => each.id === id);
  if (item === undefined) throw new AppError("NOT_FOUND", "There is no such item in this order.");
  return item;
}

/** Writes to an order that is in a given state, while nobody else does. */
export function whileIn<R>(
  { spaceId, userId }: Member,
  { orderId, state }: { readonly orderId: string; readonly state: OrderState },
  write: (tx: SpaceTransaction) => Promise<R>,
): Promise<R> {
  return inSpace(spaceId, userId, async (tx) => {
    const held = await holdRound(tx, spaceId, orderId);
    if (held.state !== state) throw new AppError("CONFLICT", `This order is ${held.state} by now; look at it again.`);
    return write(tx);
  });
}

/** Keeps a thing as an item, unless it is kept already. */
export async function keepItem(
  tx: SpaceTransaction,
  { spaceId }: Member,
  a: { readonly orderId: string; readonly thing: OrderThing },
): Promise<string> {
  const { kind, name, unit } = a.thing;
  const id = itemId(a.orderId, a.thing);
  const row = { spaceId, roundId: a.orderId, id, kind, name, nameKey: nameKey(name), unit };
  await tx.orderItem.createMany({ data: [row], skipDuplicates: true });
  return id;
}

/** Notes what was done, for everybody to read. */
export async function noteEvent(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  a: { readonly orderId: string; readonly text: string },
): Promise<void> {
  await tx.orderEvent.create({
    data: { spaceId, roundId: a.orderId, id: randomUUID(), actorId: userId, text: a.text.slice(0, 300) },
  });
}
