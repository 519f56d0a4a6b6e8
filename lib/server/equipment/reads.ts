import "server-only";
import { equipmentInput, type EquipmentProfile } from "@/lib/model/equipment";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { mayChangeEquipment } from "./may-change";

/** Every kettle of the space in its newest revision, by name. */
export function listEquipment(member: Member): Promise<readonly EquipmentProfile[]> {
  return readHeads(member, null);
}

export async function findEquipment(member: Member, id: string): Promise<EquipmentProfile | null> {
  if (!isRecordId(id)) return null;
  const [profile] = await readHeads(member, id);
  return profile ?? null;
}

async function readHeads(member: Member, id: string | null): Promise<readonly EquipmentProfile[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, async (tx) => {
    const heads = await tx.equipment.findMany({
      where: { spaceId, ...(id === null ? {} : { id }) },
      select: { id: true, ownerUserId: true, headRev: true },
      orderBy: [{ name: "asc" }, { id: "asc" }],
    });
    const revisions = await tx.equipmentRevision.findMany({
      where: { spaceId, OR: heads.map((head) => ({ equipmentId: head.id, rev: head.headRev })) },
      select: { equipmentId: true, figures: true },
    });
    const figuresOf = new Map(revisions.map((revision) => [revision.equipmentId, revision.figures]));
    return heads.flatMap((head) => (figuresOf.has(head.id) ? [{ ...head, figures: figuresOf.get(head.id) }] : []));
  });
  const nameOf = await displayNames(
    member,
    rows.map((row) => row.ownerUserId),
  );
  return rows.map((row) => ({
    id: row.id,
    ownerId: row.ownerUserId,
    ownerName: nameOf(row.ownerUserId),
    rev: row.headRev,
    equipment: equipmentInput.parse(row.figures),
    mayWrite: mayChangeEquipment(member, row.ownerUserId),
  }));
}
