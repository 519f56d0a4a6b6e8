import "server-only";
import { randomUUID } from "node:crypto";
import { ORDER_RANGE } from "@/lib/calc/order";
import type { LateDecision, LateLeave, OrderOutcome, OrderWant } from "@/lib/model/order/order-input";
import type { OrderState } from "@/lib/model/order/order-words";
import { AppError } from "../app-error";
import { isUniqueViolation, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { countedWords } from "./counted-words";
import { listOrderers } from "./people";
import { takeLateIn } from "./take-late-in";
import { noteEvent, requireItem, requireOrder, whileIn } from "./within-order";

const STALE: OrderOutcome = { ok: false, reason: "stale" };

/** Lets one member name a wish in an order that is locked. Who, by whom and why is in the history of the order. */
export async function letLate(
  member: Member,
  { orderId, userId, reason }: LateLeave,
): Promise<{ readonly id: string }> {
  requireAbility(member, "organise");
  await requireOrder(member, orderId);
  const who = (await listOrderers(member)).find((each) => each.userId === userId);
  if (who === undefined) throw new AppError("NOT_FOUND", "There is no such member here.");
  const id = randomUUID();
  const { spaceId, userId: letBy } = member;
  try {
    await whileIn(member, { orderId, state: "locked" }, async (tx) => {
      await tx.orderLateWish.create({ data: { spaceId, roundId: orderId, id, userId, reason, letBy } });
      await noteEvent(tx, member, { orderId, text: `let ${who.name} wish late: ${reason}` });
    });
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
    throw new AppError("CONFLICT", `${who.name} may wish late already.`, { cause: error });
  }
  return { id };
}

/** What a member whom an organiser lets wants of one item beside their sheets. It changes nothing until it is taken in. */
export async function askLate(member: Member, want: OrderWant): Promise<OrderOutcome> {
  const { orderId, itemId, amount, lockVersion } = want;
  const order = await requireOrder(member, orderId);
  const item = requireItem(order, itemId);
  if (item.purchase === null) throw new AppError("INVALID", `Amount: ${item.name} is not bought in this order.`);
  const own = item.shares.find(({ userId }) => userId === member.userId);
  const wanted = own?.wanted ?? 0;
  if (amount === wanted) {
    throw new AppError("INVALID", `Amount ${String(amount)} ${item.unit} is what the order has for you already.`);
  }
  const together = item.amount - wanted + amount;
  if (together > ORDER_RANGE.amount.max) {
    throw new AppError(
      "INVALID",
      `Amount: ${String(together)} ${item.unit} together is outside 0 to ${String(ORDER_RANGE.amount.max)} ${item.unit}.`,
    );
  }
  return whileIn(member, { orderId, state: "locked" }, async (tx): Promise<OrderOutcome> => {
    const mine = { spaceId: member.spaceId, roundId: orderId, userId: member.userId };
    const waiting = await tx.orderLateWish.findFirst({ where: { ...mine, state: { in: ["let", "wished"] } } });
    if (waiting === null) throw new AppError("FORBIDDEN", "The order is locked; an organiser can let you wish late.");
    if (waiting.lockVersion !== lockVersion) return STALE;
    await tx.orderLateWish.updateMany({
      where: { ...mine, id: waiting.id },
      data: { itemId, amount, state: "wished", lockVersion: { increment: 1 } },
    });
    const text = `wishes late for ${countedWords(amount, item.unit)} of ${item.name} beside the sheets, not ${countedWords(wanted, item.unit)}`;
    await noteEvent(tx, member, { orderId, text });
    return { ok: true };
  });
}

/** Takes a late wish into the order, declines it, or takes back the leave to name one. */
export async function decideLate(member: Member, decision: LateDecision): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const { orderId, id, lockVersion, state } = decision;
  const order = await requireOrder(member, orderId);
  const asked = order.lateWishes.find((each) => each.id === id);
  if (asked === undefined) throw new AppError("NOT_FOUND", "There is no such late wish in this order.");
  return whileIn(member, { orderId, state: "locked" }, async (tx): Promise<OrderOutcome> => {
    if (state === "taken in") return takeLateIn(tx, member, decision);
    const { count } = await tx.orderLateWish.updateMany({
      where: {
        ...{ spaceId: member.spaceId, roundId: orderId, id, lockVersion },
        state: state === "declined" ? "wished" : "let",
      },
      data: { state, decidedBy: member.userId, decidedAt: new Date(), lockVersion: { increment: 1 } },
    });
    if (count !== 1) return STALE;
    const done = state === "declined" ? "declined the late wish" : "took back the leave for a late wish";
    await noteEvent(tx, member, { orderId, text: `${done} of ${asked.userName}` });
    return { ok: true };
  });
}

/** Ends what waits when an order leaves its lock. An order is not placed over a wish that nobody has answered. */
export async function endLateWishes(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  a: { readonly orderId: string; readonly state: OrderState },
): Promise<void> {
  const waiting = { spaceId, roundId: a.orderId };
  if (a.state === "placed" && (await tx.orderLateWish.count({ where: { ...waiting, state: "wished" } })) > 0) {
    throw new AppError("INVALID", "A late wish waits: take it in or decline it before the order is placed.");
  }
  await tx.orderLateWish.updateMany({
    where: { ...waiting, state: { in: ["let", "wished"] } },
    data: { state: "lapsed", decidedBy: userId, decidedAt: new Date(), lockVersion: { increment: 1 } },
  });
}
