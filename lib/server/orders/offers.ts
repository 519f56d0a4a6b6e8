import "server-only";
import { randomUUID } from "node:crypto";
import type { NewOffer, OfferChange, OfferRemoval, OrderOutcome } from "@/lib/model/order/order-input";
import { AppError } from "../app-error";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { keepItem, noteEvent, requireItem, requireOrder, whileIn } from "./within-order";

const MOST_OFFERS = 20;
const STALE: OrderOutcome = { ok: false, reason: "stale" };

/** A pack with its price. Organisers know what the supplier asks. */
export async function addOffer(member: Member, offer: NewOffer): Promise<{ readonly id: string }> {
  requireAbility(member, "organise");
  const { orderId, size, priceMinor, note } = offer;
  const item = requireItem(await requireOrder(member, orderId), offer.itemId);
  if (item.offers.length >= MOST_OFFERS) {
    throw new AppError(
      "INVALID",
      `Pack size: ${item.name} has ${String(MOST_OFFERS)} packs already, and that is the most.`,
    );
  }
  const id = randomUUID();
  await whileIn(member, { orderId, state: "open" }, async (tx) => {
    const itemId = await keepItem(tx, member, { orderId, thing: item });
    await tx.orderOffer.create({
      data: { spaceId: member.spaceId, roundId: orderId, itemId, id, size, priceMinor, note },
    });
  });
  return { id };
}

/** Another size, price or note of a pack; how many are bought follows from it when the order is shown next. */
export async function saveOffer(member: Member, change: OfferChange): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const { orderId, itemId, offerId, lockVersion, size, priceMinor, note } = change;
  const item = requireItem(await requireOrder(member, orderId), itemId);
  return whileIn(member, { orderId, state: "open" }, async (tx): Promise<OrderOutcome> => {
    const { count } = await tx.orderOffer.updateMany({
      where: { spaceId: member.spaceId, roundId: orderId, itemId, id: offerId, lockVersion },
      data: { size, priceMinor, note, lockVersion: { increment: 1 } },
    });
    if (count !== 1) return STALE;
    await noteEvent(tx, member, { orderId, text: `changed a pack of ${item.name}` });
    return { ok: true };
  });
}

export async function removeOffer(member: Member, removal: OfferRemoval): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const { orderId, itemId, offerId, lockVersion } = removal;
  requireItem(await requireOrder(member, orderId), itemId);
  return whileIn(member, { orderId, state: "open" }, async (tx) => {
    const { count } = await tx.orderOffer.deleteMany({
      where: { spaceId: member.spaceId, roundId: orderId, itemId, id: offerId, lockVersion },
    });
    return count === 1 ? { ok: true } : STALE;
  });
}
