import "server-only";
import { shareExactly } from "@/lib/calc/order";
import type { OrderItem } from "@/lib/model/order/order";
import type { HandOut, OrderOutcome, Receipt } from "@/lib/model/order/order-input";
import { AppError } from "../app-error";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { requireItem, requireOrder, whileIn } from "./within-order";

const STALE: OrderOutcome = { ok: false, reason: "stale" };

/** What came of one item; a short delivery is shared in proportion, or as the organiser says. */
export async function receiveItem(member: Member, receipt: Receipt): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const { orderId, itemId, lockVersion, received, paidMinor } = receipt;
  const item = requireItem(await requireOrder(member, orderId), itemId);
  const shares = allot(item, receipt);
  const { spaceId } = member;
  return whileIn(member, { orderId, state: "placed" }, async (tx): Promise<OrderOutcome> => {
    const { count } = await tx.orderItem.updateMany({
      where: { spaceId, roundId: orderId, id: itemId, lockVersion },
      data: { receivedAmount: received, paidMinor, lockVersion: { increment: 1 } },
    });
    if (count !== 1) return STALE;
    for (const [userId, allotted] of shares) {
      await tx.orderShare.updateMany({
        where: { spaceId, roundId: orderId, itemId, userId },
        data: { allotted, lockVersion: { increment: 1 } },
      });
    }
    return { ok: true };
  });
}

function allot(
  { name, unit, purchase, shares }: OrderItem,
  { received, allotted }: Receipt,
): ReadonlyMap<string, number> {
  if (purchase === null) throw new AppError("INVALID", `Received: ${name} was not ordered.`);
  const ordered = shares.reduce((sum, { amount }) => sum + amount, 0);
  if (allotted === null) {
    const parts =
      received >= ordered
        ? shares.map(({ amount }) => amount)
        : shareExactly({ total: received, shares: shares.map(({ amount }) => amount) });
    return new Map(shares.map(({ userId }, i) => [userId, parts[i] ?? 0]));
  }
  const said = shares.map(({ userId }) => [userId, allotted[userId] ?? 0] as const);
  const total = said.reduce((sum, [, amount]) => sum + amount, 0);
  if (total > received) {
    throw new AppError(
      "INVALID",
      `Shares of ${name}: ${String(total)} ${unit} together are more than the ${String(received)} ${unit} that came.`,
    );
  }
  return new Map(said);
}

/** What was weighed out for one member, by whom and when. */
export async function handOutShare(
  member: Member,
  { orderId, itemId, userId, lockVersion, amount }: HandOut,
): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const item = requireItem(await requireOrder(member, orderId), itemId);
  if (!item.shares.some((share) => share.userId === userId)) {
    throw new AppError("NOT_FOUND", "This member has no share of this item.");
  }
  const handed =
    amount === null
      ? { handed: null, handedBy: null, handedAt: null }
      : { handed: amount, handedBy: member.userId, handedAt: new Date() };
  return whileIn(member, { orderId, state: "received" }, async (tx) => {
    const { count } = await tx.orderShare.updateMany({
      where: { spaceId: member.spaceId, roundId: orderId, itemId, userId, lockVersion },
      data: { ...handed, lockVersion: { increment: 1 } },
    });
    return count === 1 ? { ok: true } : STALE;
  });
}
