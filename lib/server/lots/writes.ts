import "server-only";
import { randomUUID } from "node:crypto";
import type { Archiving, KeepOutcome } from "@/lib/model/ingredient";
import { LOT_UNIT, type LotChange, type NewLot } from "@/lib/model/ingredient-lot";
import { AppError } from "../app-error";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { mayChangeLot } from "./may-change";

/** Keeps a new lot, with its first movement: how much of it came. */
export async function createLot(member: Member, lot: NewLot): Promise<{ readonly id: string }> {
  requireAbility(member, "brew");
  return { id: await inSpace(member.spaceId, member.userId, (tx) => insertLot(tx, member, lot)) };
}

/** The same within a larger piece of work. */
export async function insertLot(tx: SpaceTransaction, { spaceId, userId }: Member, lot: NewLot): Promise<string> {
  const id = randomUUID();
  await tx.ingredientLot.create({
    data: {
      spaceId,
      id,
      ownerUserId: lot.owner === "club" ? null : userId,
      kind: lot.what.kind,
      onHand: lot.onHand,
      unit: LOT_UNIT[lot.what.kind],
      createdBy: userId,
      ...columnsOf(lot),
    },
  });
  await tx.ingredientLotMovement.create({
    data: { spaceId, lotId: id, version: 1, kind: "counted", change: lot.onHand, after: lot.onHand, actorId: userId },
  });
  return id;
}

/** Changes what a lot is, if nobody changed it since it was read. */
export function saveLot(member: Member, change: LotChange): Promise<KeepOutcome> {
  const { id, lockVersion, what } = change;
  return inSpace(member.spaceId, member.userId, async (tx) => {
    const { kind } = await requireLot(tx, member, id);
    if (kind !== what.kind) throw new AppError("INVALID", `This lot is of a ${kind} and stays so.`);
    return update(tx, member, { id, lockVersion, data: columnsOf(change) });
  });
}

/** Puts a lot away, or takes it out again. Brews that were made of it still name it. */
export function archiveLot(member: Member, { id, lockVersion, archived }: Archiving): Promise<KeepOutcome> {
  return inSpace(member.spaceId, member.userId, async (tx) => {
    await requireLot(tx, member, id);
    return update(tx, member, { id, lockVersion, data: { archivedAt: archived ? new Date() : null } });
  });
}

async function requireLot(tx: SpaceTransaction, member: Member, id: string): Promise<{ readonly kind: string }> {
  const { spaceId } = member;
  const lot = await tx.ingredientLot.findUnique({
    where: { spaceId_id: { spaceId, id } },
    select: { ownerUserId: true, kind: true },
  });
  if (lot === null) throw new AppError("NOT_FOUND", "There is no such lot here.");
  if (!mayChangeLot(member, lot.ownerUserId)) {
    throw new AppError("FORBIDDEN", "Only who keeps this lot or an organiser changes it.");
  }
  return lot;
}

type LotUpdate = Parameters<SpaceTransaction["ingredientLot"]["updateMany"]>[0]["data"];

async function update(
  tx: SpaceTransaction,
  { spaceId }: Member,
  { id, lockVersion, data }: { readonly id: string; readonly lockVersion: number; readonly data: LotUpdate },
): Promise<KeepOutcome> {
  // The version in the condition makes the second of two people change no row.
  const { count } = await tx.ingredientLot.updateMany({
    where: { spaceId, id, lockVersion },
    data: { ...data, lockVersion: { increment: 1 } },
  });
  return count === 1 ? { ok: true, lockVersion: lockVersion + 1 } : { ok: false, reason: "stale" };
}

function columnsOf({ name, label, what, bestBefore, price, notes }: Omit<LotChange, "id" | "lockVersion">) {
  return {
    name,
    label,
    figures: toJson(what.figures),
    bestBefore: bestBefore === null ? null : new Date(bestBefore),
    priceMinor: price === null ? null : BigInt(price.minor),
    priceFor: price?.for ?? null,
    currency: price?.currency ?? null,
    notes,
  };
}
