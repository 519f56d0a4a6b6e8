import "server-only";
import type { AdaptationChange } from "@/lib/model/adaptation";
import { AppError } from "../app-error";
import { inSpace, isUniqueViolation, toJson, type SpaceTransaction } from "../db";
import { mayChangeEquipment } from "../equipment/may-change";
import type { Member } from "../session";

/** How it ended: kept under this version, or somebody else chose first. */
export type AdaptationOutcome =
  { readonly ok: true; readonly lockVersion: number } | { readonly ok: false; readonly reason: "stale" };

/** Keeps what was chosen for a revision on a kettle, if nobody chose since. The kettle's owner or an organiser may. */
export async function saveAdaptation(member: Member, change: AdaptationChange): Promise<AdaptationOutcome> {
  try {
    return await inSpace(member.spaceId, member.userId, (tx) => write(tx, member, change));
  } catch (error) {
    // Two people made the first choice at once; the key let one of them through.
    if (isUniqueViolation(error)) return { ok: false, reason: "stale" };
    throw error;
  }
}

async function write(tx: SpaceTransaction, member: Member, change: AdaptationChange): Promise<AdaptationOutcome> {
  const { spaceId, userId } = member;
  const { recipeId, rev, equipmentId, lockVersion, choice } = change;
  const key = { spaceId, recipeId, rev, equipmentId };
  const revision = await tx.recipeRevision.findUnique({
    where: { spaceId_recipeId_rev: { spaceId, recipeId, rev } },
    select: { rev: true },
  });
  const kettle = await tx.equipment.findUnique({
    where: { spaceId_id: { spaceId, id: equipmentId } },
    select: { ownerUserId: true },
  });
  if (revision === null || kettle === null) throw new AppError("NOT_FOUND", "There is no such recipe or kettle here.");
  if (!mayChangeEquipment(member, kettle.ownerUserId)) {
    throw new AppError("FORBIDDEN", "Only the owner of this kettle or an organiser chooses for it.");
  }
  await requireLots(tx, member, Object.values(choice.lots));

  const chosen = { volume: choice.volume, way: choice.way, lots: toJson(choice.lots), changedBy: userId };
  if (lockVersion === 0) {
    await tx.adaptation.create({ data: { ...key, ...chosen } });
    return { ok: true, lockVersion: 1 };
  }
  const { count } = await tx.adaptation.updateMany({
    where: { ...key, lockVersion },
    data: { ...chosen, changedAt: new Date(), lockVersion: { increment: 1 } },
  });
  return count === 1 ? { ok: true, lockVersion: lockVersion + 1 } : { ok: false, reason: "stale" };
}

async function requireLots(tx: SpaceTransaction, { spaceId }: Member, ids: readonly string[]): Promise<void> {
  const asked = [...new Set(ids)];
  const found = await tx.ingredientLot.count({ where: { spaceId, id: { in: asked } } });
  if (found !== asked.length) throw new AppError("NOT_FOUND", "There is no such lot here.");
}
