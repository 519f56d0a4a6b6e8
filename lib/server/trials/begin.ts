import "server-only";
import { randomUUID } from "node:crypto";
import { AppError } from "../app-error";
import { inSpace, type SpaceTransaction } from "../db";
import { mayChangeEquipment } from "../equipment/may-change";
import type { Member } from "../session";

/** Begins a trial of a kettle. */
export function beginTrial(member: Member, equipmentId: string): Promise<{ readonly id: string }> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    await requireOwnKettle(tx, member, equipmentId);
    const id = randomUUID();
    await tx.commissioningTrial.create({ data: { spaceId, id, equipmentId, begunBy: userId } });
    return { id };
  });
}

/** Stops whoever may not change a kettle, and so not its trials either. */
export async function requireOwnKettle(tx: SpaceTransaction, member: Member, equipmentId: string): Promise<void> {
  const kettle = await tx.equipment.findUnique({
    where: { spaceId_id: { spaceId: member.spaceId, id: equipmentId } },
    select: { ownerUserId: true },
  });
  if (kettle === null) throw new AppError("NOT_FOUND", "There is no such equipment here.");
  if (!mayChangeEquipment(member, kettle.ownerUserId)) {
    throw new AppError("FORBIDDEN", "Only the owner of this equipment or an organiser commissions it.");
  }
}
