import "server-only";
import type { Invitation } from "@/lib/model/invitation";
import { INVITABLE_ROLES } from "@/lib/model/roles";
import { directory } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

/** The club's invitations, the newest end first. Only organisers see them. */
export async function listInvitations(member: Member): Promise<readonly Invitation[]> {
  requireAbility(member, "organise");
  const rows = await directory.invite.findMany({
    where: { spaceId: member.spaceId },
    select: { id: true, role: true, emailNorm: true, uses: true, maxUses: true, expiresAt: true, revokedAt: true },
    orderBy: { expiresAt: "desc" },
  });
  return rows.map(({ emailNorm, role, ...row }) => ({
    ...row,
    email: emailNorm,
    role: storedWord(INVITABLE_ROLES, role),
  }));
}
