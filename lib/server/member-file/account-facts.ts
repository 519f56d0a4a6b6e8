import "server-only";
import { directory } from "../db";

/** What the directory knows of somebody: no hash of a password, no token, no address of a push service. */
export async function readAccount(userId: string): Promise<object> {
  const of = { where: { userId } };
  const [account, sessions, memberships, invitations, calendars, sensorKeys, browsers, deeds] = await Promise.all([
    directory.appUser.findUniqueOrThrow({
      where: { id: userId },
      select: { id: true, emailNorm: true, displayName: true, preferences: true, mailChanges: true, createdAt: true },
    }),
    directory.authSession.findMany({ ...of, select: { createdAt: true, lastSeenAt: true, userAgent: true } }),
    directory.membership.findMany({
      ...of,
      select: { role: true, status: true, joinedAt: true, space: { select: { name: true, slug: true, kind: true } } },
    }),
    // To whom they were sent is about somebody else.
    directory.invite.findMany({
      where: { createdBy: userId },
      select: { spaceId: true, role: true, uses: true, expiresAt: true },
    }),
    directory.calendarToken.findMany({ ...of, select: { spaceId: true, createdAt: true, revokedAt: true } }),
    directory.sensorToken.findMany({ ...of, select: { spaceId: true, name: true, createdAt: true, lastUsedAt: true } }),
    directory.pushSubscription.findMany({ ...of, select: { createdAt: true } }),
    directory.auditLog.findMany({
      where: { actor: userId },
      select: { at: true, action: true, outcome: true, spaceId: true, target: true },
      orderBy: { at: "asc" },
    }),
  ]);
  return { account, sessions, memberships, invitations, calendars, sensorKeys, browsers, deeds };
}
