import "server-only";
import { randomUUID } from "node:crypto";
import type {
  ItemSettings,
  NewOrder,
  NewThing,
  OrderChange,
  OrderOutcome,
  OrderWant,
} from "@/lib/model/order/order-input";
import type { OrderUnit } from "@/lib/model/order/order-words";
import { AppError } from "../app-error";
import { inSpace, isUniqueViolation } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { listPeople } from "../spaces/reads";
import { countedWords } from "./counted-words";
import { keepItem, noteEvent, requireItem, requireOrder, whileIn } from "./within-order";

const STALE: OrderOutcome = { ok: false, reason: "stale" };

/** Opens an order, of a shared brew or on its own. */
export async function createOrder(member: Member, order: NewOrder): Promise<{ readonly id: string }> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  const id = randomUUID();
  await inSpace(spaceId, userId, async (tx) => {
    if (order.sharedBrewId !== null) {
      const shared = await tx.sharedBrew.findUnique({
        where: { spaceId_id: { spaceId, id: order.sharedBrewId } },
        select: { id: true },
      });
      if (shared === null) throw new AppError("NOT_FOUND", "There is no such shared brew here.");
    }
    await tx.orderRound.create({ data: { spaceId, id, ...order, createdBy: userId } });
    await noteEvent(tx, member, { orderId: id, text: "opened the order" });
  });
  return { id };
}

/** Another title, closing day or note, as long as the order is open. */
export async function saveOrder(member: Member, change: OrderChange): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const { orderId, lockVersion, title, closesAt, note } = change;
  await requireOrder(member, orderId);
  return whileIn(member, { orderId, state: "open" }, async (tx): Promise<OrderOutcome> => {
    const { count } = await tx.orderRound.updateMany({
      where: { spaceId: member.spaceId, id: orderId, lockVersion },
      data: { title, closesAt, note, lockVersion: { increment: 1 } },
    });
    if (count !== 1) return STALE;
    await noteEvent(tx, member, { orderId, text: "changed title, closing day or note" });
    return { ok: true };
  });
}

/** What a member wants beside their sheets; 0 takes it back. `lockVersion` 0 says that there was none. */
export async function saveWant(member: Member, want: OrderWant): Promise<OrderOutcome> {
  const { orderId, amount, lockVersion } = want;
  const thing = requireItem(await requireOrder(member, orderId), want.itemId);
  const { spaceId, userId } = member;
  return whileIn(member, { orderId, state: "open" }, async (tx) => {
    const itemId = await keepItem(tx, member, { orderId, thing });
    const key = { spaceId, roundId: orderId, itemId, userId };
    const kept = await tx.orderWant.findUnique({ where: { spaceId_roundId_itemId_userId: key } });
    if ((kept?.lockVersion ?? 0) !== lockVersion) return STALE;
    if (amount === 0) await tx.orderWant.deleteMany({ where: key });
    else if (kept === null) await tx.orderWant.create({ data: { ...key, amount } });
    else await tx.orderWant.updateMany({ where: key, data: { amount, lockVersion: { increment: 1 } } });
    await noteEvent(tx, member, { orderId, text: wantWords(thing.name, amount, thing.unit) });
    return { ok: true };
  });
}

/** Asks for something that no sheet names. */
export async function addThing(
  member: Member,
  { orderId, amount, ...thing }: NewThing,
): Promise<{ readonly itemId: string }> {
  await requireOrder(member, orderId);
  const { spaceId, userId } = member;
  try {
    return await whileIn(member, { orderId, state: "open" }, async (tx) => {
      const itemId = await keepItem(tx, member, { orderId, thing });
      await tx.orderWant.create({ data: { spaceId, roundId: orderId, itemId, userId, amount } });
      await noteEvent(tx, member, { orderId, text: wantWords(thing.name, amount, thing.unit) });
      return { itemId };
    });
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
    throw new AppError("CONFLICT", `You want some ${thing.name} already: change the amount there.`, { cause: error });
  }
}

function wantWords(name: string, amount: number, unit: OrderUnit): string {
  return amount === 0
    ? `wants no ${name} beside the sheets`
    : `wants ${countedWords(amount, unit)} of ${name} beside the sheets`;
}

/** Who takes what is left over, and how many cells a pack of yeast has. */
export async function saveItem(member: Member, settings: ItemSettings): Promise<OrderOutcome> {
  requireAbility(member, "organise");
  const { orderId, lockVersion, leftOverTo, cellsPerPiece } = settings;
  const item = requireItem(await requireOrder(member, orderId), settings.itemId);
  if (cellsPerPiece !== null && item.kind !== "yeast") {
    throw new AppError("INVALID", `Cells in a pack: ${item.name} is no yeast.`);
  }
  if (leftOverTo !== null) await requirePerson(member, leftOverTo);
  return whileIn(member, { orderId, state: "open" }, async (tx) => {
    const itemId = await keepItem(tx, member, { orderId, thing: item });
    const { count } = await tx.orderItem.updateMany({
      // An item that was not kept when it was read has its first version now.
      where: { spaceId: member.spaceId, roundId: orderId, id: itemId, lockVersion: Math.max(1, lockVersion) },
      data: { leftOverTo, cellsPerPiece, lockVersion: { increment: 1 } },
    });
    return count === 1 ? { ok: true } : STALE;
  });
}

/** Somebody of the club now who may order. */
export async function requirePerson(member: Member, userId: string): Promise<string> {
  const person = (await listPeople(member)).find((each) => each.userId === userId);
  if (person === undefined) throw new AppError("NOT_FOUND", "There is no such member here.");
  return person.displayName;
}
