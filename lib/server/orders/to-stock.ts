import "server-only";
import { LOT_UNIT, type LotKindAndFigures, type NewLot } from "@/lib/model/ingredient-lot";
import type { Order, OrderItem } from "@/lib/model/order/order";
import type { OrderOutcome, Stocking } from "@/lib/model/order/order-input";
import type { OrderKind } from "@/lib/model/order/order-words";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { insertLot } from "../lots/writes";
import type { Member } from "../session";
import { holdRound } from "./round-row";
import { requireItem, requireOrder } from "./within-order";

const LONGEST_LABEL = 80;

/** Takes what was weighed out for a member into their stock, as a lot of their own; once. */
export async function stockShare(member: Member, stocking: Stocking): Promise<OrderOutcome> {
  const { orderId, itemId, lockVersion } = stocking;
  const { spaceId, userId } = member;
  const order = await requireOrder(member, orderId);
  const lot = lotOf(order, requireItem(order, itemId), userId);
  return inSpace(spaceId, userId, async (tx): Promise<OrderOutcome> => {
    await holdRound(tx, spaceId, orderId);
    const key = { spaceId, roundId: orderId, itemId, userId };
    const { count } = await tx.orderShare.updateMany({
      where: { ...key, lockVersion, lotId: null, handed: { not: null } },
      data: { lockVersion: { increment: 1 } },
    });
    if (count !== 1) return { ok: false, reason: "stale" };
    await tx.orderShare.updateMany({ where: key, data: { lotId: await insertLot(tx, member, lot) } });
    return { ok: true };
  });
}

function lotOf({ title, currency }: Order, item: OrderItem, userId: string): NewLot {
  const share = item.shares.find((each) => each.userId === userId);
  const amount = share?.handed?.amount ?? 0;
  if (amount === 0) throw new AppError("INVALID", `No ${item.name} was weighed out for you.`);
  const what = asBought(item.kind);
  if (what === null) throw new AppError("INVALID", `${item.name} is kept by hand: the stock asks more about it.`);
  const onHand = LOT_UNIT[what.kind] === "kg" ? amount / 1000 : amount;
  const cost = share?.cost ?? null;
  return {
    name: item.name,
    label: title.slice(0, LONGEST_LABEL),
    what,
    owner: "me",
    onHand,
    bestBefore: null,
    price: cost === null ? null : { minor: cost, currency, for: onHand },
    notes: "",
  };
}

/** A lot of which no analysis is known yet; yeast is dry or liquid, which an order does not know. */
function asBought(kind: OrderKind): LotKindAndFigures | null {
  if (kind === "fermentable") return { kind, figures: { extract: null, moisture: null, colour: null } };
  if (kind === "hop") return { kind, figures: { alpha: null, analysedOn: null, storedAt: null, packaging: null } };
  if (kind === "acid") return { kind, figures: { massFraction: null, density: null } };
  return kind === "salt" ? { kind, figures: {} } : null;
}
