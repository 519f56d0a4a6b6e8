import "server-only";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { directory } from "../db";
import { requireAbility } from "../permissions";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** Makes a member of the club an organiser as well. It takes effect at their next request, as roles are read at each. */
export async function makeOrganiser(member: Member, userId: string): Promise<void> {
  requireAbility(member, "organise");
  const { spaceId } = member;
  await directory.$transaction(async (tx) => {
    const { count } = isRecordId(userId)
      ? await tx.membership.updateMany({
          where: { spaceId, userId, status: "active", role: { not: "organiser" }, space: { kind: "club" } },
          data: { role: "organiser" },
        })
      : { count: 0 };
    if (count === 0) throw new AppError("NOT_FOUND", "There is no such member here who is not an organiser yet.");
    await writeAudit(tx, { action: "hand over", outcome: "ok", actor: member.userId, spaceId, target: userId });
  });
}
