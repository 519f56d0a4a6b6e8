import "server-only";
import { lateDifference, type LateShare } from "@/lib/model/order/late-difference";
import type { LateWish, OrderItem } from "@/lib/model/order/order";
import type { LateDecision, OrderOutcome } from "@/lib/model/order/order-input";
import { AppError } from "../app-error";
import type { SpaceTransaction } from "../db";
import type { Member } from "../session";
import { countedWords } from "./counted-words";
import { toOrder } from "./reads";
import { findRound } from "./round-row";
import { noteEvent } from "./within-order";

const STALE: OrderOutcome = { ok: false, reason: "stale" };

/** A locked order is what was kept: neither sheets nor stock have a say. */
const NOTHING_AROUND = { sheets: [], onHand: [] } as const;

/**
 * Takes a late wish into a locked order of which the caller holds the row: the part of one member in one item, with the packs and
 * what each pays. Refused where the organiser saw another difference than there is now.
 */
export async function takeLateIn(
  tx: SpaceTransaction,
  member: Member,
  { orderId, id, lockVersion, fingerprint }: LateDecision,
): Promise<OrderOutcome> {
  const { spaceId, userId } = member;
  const round = await findRound(tx, spaceId, orderId);
  if (round === null) throw new AppError("NOT_FOUND", "There is no such order here.");
  const order = await toOrder(member, round, NOTHING_AROUND);
  const asked = order.lateWishes.find((each) => each.id === id);
  const shown = order.lateDifferences.find(({ wishId }) => wishId === id);
  const item = order.items.find((each) => each.id === shown?.itemId);
  if (asked?.wish === null || asked === undefined || item === undefined) return STALE;
  if (asked.lockVersion !== lockVersion || shown?.fingerprint !== fingerprint) return STALE;
  // The time of the transaction is what lets its other writes through: see the migration.
  await tx.$executeRaw`
    UPDATE order_late_wish
    SET state = 'taken in', decided_by = ${userId}::uuid, decided_at = now(), lock_version = lock_version + 1
    WHERE space_id = ${spaceId}::uuid AND round_id = ${orderId}::uuid AND id = ${id}::uuid`;
  await keepWant(tx, { spaceId, roundId: orderId, itemId: item.id, userId: asked.userId }, asked.wish.amount);
  await keepPurchase(tx, { spaceId, roundId: orderId, itemId: item.id }, item, asked);
  // Whoever is about to place the order saw other totals.
  await tx.orderRound.updateMany({ where: { spaceId, id: orderId }, data: { lockVersion: { increment: 1 } } });
  await noteEvent(tx, member, { orderId, text: takenInWords(item, asked) });
  return { ok: true };
}

interface ItemKey {
  readonly spaceId: string;
  readonly roundId: string;
  readonly itemId: string;
}

async function keepWant(tx: SpaceTransaction, key: ItemKey & { readonly userId: string }, amount: number) {
  if (amount === 0) {
    await tx.orderWant.deleteMany({ where: key });
    return;
  }
  await tx.orderWant.upsert({
    where: { spaceId_roundId_itemId_userId: key },
    create: { ...key, amount },
    update: { amount, lockVersion: { increment: 1 } },
  });
}

async function keepPurchase(tx: SpaceTransaction, key: ItemKey, item: OrderItem, asked: LateWish): Promise<void> {
  const found = lateDifference(item, { ...asked, amount: asked.wish?.amount ?? 0 });
  if (found === null) throw new Error("a late wish was shown for an item that is not bought");
  const kept = found.shares.map(({ userId }) => userId);
  await tx.orderShare.deleteMany({ where: { ...key, userId: { notIn: kept } } });
  for (const share of found.shares) await keepShare(tx, key, share);
  for (const [place, { id }] of item.offers.entries()) {
    await tx.orderOffer.updateMany({
      where: { ...key, id },
      data: { count: found.after.purchase.counts[place] ?? 0 },
    });
  }
}

async function keepShare(tx: SpaceTransaction, key: ItemKey, share: LateShare): Promise<void> {
  const { userId, needed, onHand, wanted, extra, amount } = share;
  await tx.orderShare.upsert({
    where: { spaceId_roundId_itemId_userId: { ...key, userId } },
    create: { ...key, userId, needed, onHand, wanted, extra, amount },
    update: { wanted, extra, amount, lockVersion: { increment: 1 } },
  });
}

function takenInWords({ name, unit, shares }: OrderItem, { userId, userName, wish, reason }: LateWish): string {
  const before = shares.find((share) => share.userId === userId)?.wanted ?? 0;
  const after = wish?.amount ?? 0;
  return `took in the late wish of ${userName}: ${countedWords(after, unit)} of ${name} beside the sheets, not ${countedWords(before, unit)} (${reason})`;
}
