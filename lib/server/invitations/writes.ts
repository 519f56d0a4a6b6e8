import "server-only";
import { randomUUID } from "node:crypto";
import type { NewInvitation } from "@/lib/model/invitation";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { directory } from "../db";
import { requireAbility } from "../permissions";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { newToken, tokenHash } from "../tokens";

const DAY_MS = 86_400_000;

/** Makes an invitation. The token is in the answer and nowhere else: the table keeps its hash. */
export async function createInvitation(
  member: Member,
  { role, email, maxUses, days }: NewInvitation,
): Promise<{ readonly token: string }> {
  requireAbility(member, "organise");
  if (member.spaceKind !== "club") throw new AppError("FORBIDDEN", "A bench of one's own has no other members.");
  const id = randomUUID();
  const token = newToken();
  await directory.$transaction(async (tx) => {
    await tx.invite.create({
      data: {
        spaceId: member.spaceId,
        id,
        tokenHash: tokenHash(token),
        role,
        emailNorm: email,
        maxUses,
        createdBy: member.userId,
        expiresAt: new Date(Date.now() + days * DAY_MS),
      },
    });
    await writeAudit(tx, {
      action: "invitation",
      outcome: "ok",
      actor: member.userId,
      spaceId: member.spaceId,
      target: id,
      meta: { role },
    });
  });
  return { token };
}

export async function revokeInvitation(member: Member, id: string): Promise<void> {
  requireAbility(member, "organise");
  const { count } = isRecordId(id)
    ? await directory.invite.updateMany({
        where: { spaceId: member.spaceId, id, revokedAt: null },
        data: { revokedAt: new Date() },
      })
    : { count: 0 };
  if (count === 0) throw new AppError("NOT_FOUND", "There is no such open invitation.");
  await writeAudit(directory, {
    action: "invitation",
    outcome: "ok",
    actor: member.userId,
    spaceId: member.spaceId,
    target: id,
    meta: { revoked: "yes" },
  });
}
