import "server-only";
import { randomUUID } from "node:crypto";
import type { Equipment } from "@/lib/calc/ledger";
import type { EquipmentChange, NewEquipment } from "@/lib/model/equipment";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { AppError } from "../app-error";
import { contentHash, sameBytes } from "../content-hash";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import { LostRace, unlessStale } from "../save-race";
import type { Member } from "../session";
import { mayChangeEquipment, requireMayChange } from "./may-change";

export async function createEquipment(member: Member, { equipment }: NewEquipment): Promise<{ readonly id: string }> {
  requireAbility(member, "keep equipment");
  const { spaceId, userId } = member;
  const id = randomUUID();
  await inSpace(spaceId, userId, async (tx) => {
    await tx.equipment.create({ data: { spaceId, id, ownerUserId: userId, name: equipment.name, headRev: 1 } });
    await tx.equipmentRevision.create({ data: { spaceId, equipmentId: id, rev: 1, ...columnsOf(equipment) } });
  });
  return { id };
}

/** Adds a revision to an equipment profile, if `baseRev` is still the newest one. */
export function saveEquipment(member: Member, change: EquipmentChange): Promise<SaveOutcome> {
  return unlessStale(
    () => inSpace(member.spaceId, member.userId, (tx) => addRevision(tx, member, change)),
    () => presentHead(member, change.id),
  );
}

/** The same within a transaction of the caller, who runs it in `unlessStale`. */
export async function addRevision(
  tx: SpaceTransaction,
  member: Member,
  { id, baseRev, equipment }: EquipmentChange,
): Promise<SaveOutcome> {
  const { spaceId } = member;
  const head = await tx.equipment.findUnique({
    where: { spaceId_id: { spaceId, id } },
    select: { headRev: true, ownerUserId: true },
  });
  if (head === null) throw new AppError("NOT_FOUND", "There is no such equipment here.");
  requireMayChange({ mayWrite: mayChangeEquipment(member, head.ownerUserId) });
  if (head.headRev !== baseRev) return { ok: false, reason: "stale", headRev: head.headRev };
  const base = await tx.equipmentRevision.findUniqueOrThrow({
    where: { spaceId_equipmentId_rev: { spaceId, equipmentId: id, rev: baseRev } },
    select: { contentHash: true },
  });
  const columns = columnsOf(equipment);
  if (sameBytes(base.contentHash, columns.contentHash)) return { ok: false, reason: "unchanged" };

  const rev = baseRev + 1;
  await tx.equipmentRevision.create({ data: { spaceId, equipmentId: id, rev, ...columns } });
  const { count } = await tx.equipment.updateMany({
    where: { spaceId, id, headRev: baseRev },
    data: { headRev: rev, name: equipment.name },
  });
  if (count !== 1) throw new LostRace();
  return { ok: true, rev };
}

/** The newest revision of a profile that is there. */
export async function presentHead({ spaceId, userId }: Member, id: string): Promise<number> {
  const head = await inSpace(spaceId, userId, (tx) =>
    tx.equipment.findUniqueOrThrow({ where: { spaceId_id: { spaceId, id } }, select: { headRev: true } }),
  );
  return head.headRev;
}

/** The figures that the database itself holds to a range stand in columns of their own, beside the whole. */
function columnsOf(equipment: Equipment) {
  const { kettle, mash, altitude } = equipment;
  return {
    kettleL: kettle.capacity,
    basketKg: mash.grainLimit,
    ratedW: kettle.ratedPower,
    ratedV: kettle.ratedVoltage,
    supplyV: kettle.supplyVoltage,
    altitudeM: altitude,
    figures: toJson(equipment),
    contentHash: contentHash(equipment),
  };
}
