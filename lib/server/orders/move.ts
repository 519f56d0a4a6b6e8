import "server-only";
import type { Order, OrderItem } from "@/lib/model/order/order";
import type { OrderMove, OrderOutcome } from "@/lib/model/order/order-input";
import { ORDER_MOVES, ORDER_STATES, type OrderState } from "@/lib/model/order/order-words";
import { AppError } from "../app-error";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { endLateWishes } from "./late-wishes";
import { readAround, toOrder, type Around } from "./reads";
import { findRound, holdRound } from "./round-row";
import { keepItem, noteEvent, requireOrder } from "./within-order";

const STALE: OrderOutcome = { ok: false, reason: "stale" };

const DONE: Readonly<Record<OrderState, string>> = {
  open: "opened the order again",
  locked: "locked the order",
  placed: "placed the order with the supplier",
  received: "received the order",
  "handed out": "closed the order: all is handed out",
  cancelled: "cancelled the order",
};

/**
 * Takes an order one step on. Locking keeps what everybody needs at this moment, and which packs are bought; it is refused
 * where that is not what the organiser saw. What changes afterwards does not change the order.
 */
export async function moveOrder(member: Member, move: OrderMove): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const { orderId, state, lockVersion } = move;
  const { sharedBrew } = await requireOrder(member, orderId);
  // Read before the order is held: these reads have connections of their own.
  const around = await readAround(member, { sharedBrewId: sharedBrew?.id ?? null });
  return inSpace(member.spaceId, member.userId, async (tx): Promise<OrderOutcome> => {
    const held = await holdRound(tx, member.spaceId, orderId);
    if (held.lockVersion !== lockVersion) return STALE;
    if (!ORDER_MOVES[held.state].includes(state)) {
      throw new AppError("INVALID", `An order that is ${held.state} does not become ${state}.`);
    }
    if (state === "locked" && !(await keepShares(tx, member, { move, around }))) return STALE;
    if (state === "received" || state === "handed out") await requireWhole(tx, member, { orderId, state, around });
    if (held.state === "locked") await endLateWishes(tx, member, { orderId, state });
    await tx.orderRound.update({
      where: { spaceId_id: { spaceId: member.spaceId, id: orderId } },
      data: { state, lockVersion: { increment: 1 } },
    });
    // After the change of state, which lets the rows of an open order be changed again.
    if (state === "open") await dropShares(tx, member, orderId);
    await noteEvent(tx, member, { orderId, text: DONE[state] });
    return { ok: true };
  });
}

async function presentOrder(tx: SpaceTransaction, member: Member, orderId: string, around: Around): Promise<Order> {
  const round = await findRound(tx, member.spaceId, orderId);
  if (round === null) throw new AppError("NOT_FOUND", "There is no such order here.");
  return toOrder(member, round, around);
}

/** Whether what is to be kept is what the organiser saw; if so, it is kept. */
async function keepShares(
  tx: SpaceTransaction,
  member: Member,
  { move, around }: { readonly move: OrderMove; readonly around: Around },
): Promise<boolean> {
  const { orderId } = move;
  const order = await presentOrder(tx, member, orderId, around);
  if (order.fingerprint !== move.fingerprint) return false;
  const bought = order.items.filter(({ amount }) => amount > 0);
  if (!bought.some(({ purchase }) => purchase !== null)) {
    throw new AppError("INVALID", "There is nothing to order yet: nobody needs anything that has a pack and a price.");
  }
  for (const item of bought) await keepItemShares(tx, member, { orderId, item });
  return true;
}

async function keepItemShares(
  tx: SpaceTransaction,
  member: Member,
  { orderId, item }: { readonly orderId: string; readonly item: OrderItem },
): Promise<void> {
  const { spaceId } = member;
  const itemId = await keepItem(tx, member, { orderId, thing: item });
  const key = { spaceId, roundId: orderId, itemId };
  await tx.orderShare.createMany({
    data: item.shares
      .filter(({ amount }) => amount > 0)
      .map(({ userId, needed, onHand, wanted, extra, amount, sources }) => ({
        ...{ ...key, userId, needed, onHand, wanted, extra, amount },
        sources: toJson(sources),
      })),
  });
  for (const [place, { id }] of item.offers.entries()) {
    await tx.orderOffer.updateMany({ where: { ...key, id }, data: { count: item.purchase?.counts[place] ?? 0 } });
  }
}

async function dropShares(tx: SpaceTransaction, { spaceId }: Member, orderId: string): Promise<void> {
  await tx.orderShare.deleteMany({ where: { spaceId, roundId: orderId } });
  await tx.orderOffer.updateMany({ where: { spaceId, roundId: orderId }, data: { count: null } });
}

/** The database refuses the same; here it is said which item or member is missing. */
async function requireWhole(
  tx: SpaceTransaction,
  member: Member,
  a: { readonly orderId: string; readonly state: OrderState; readonly around: Around },
): Promise<void> {
  const { items } = await presentOrder(tx, member, a.orderId, a.around);
  const bought = items.filter(({ purchase }) => purchase !== null);
  if (storedWord(ORDER_STATES, a.state) === "received") {
    const missing = bought.filter(({ received }) => received === null).map(({ name }) => name);
    if (missing.length > 0) throw new AppError("INVALID", `Not said yet how much came of: ${missing.join(", ")}.`);
    return;
  }
  const missing = bought.flatMap(({ name, shares }) =>
    shares
      .filter(({ allotted, handed }) => (allotted ?? 0) > 0 && handed === null)
      .map(({ userName }) => `${name} for ${userName}`),
  );
  if (missing.length > 0) throw new AppError("INVALID", `Not handed out yet: ${missing.join(", ")}.`);
}
