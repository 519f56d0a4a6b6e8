import "server-only";
import type { AccountClosing, ClosingClub } from "@/lib/model/account-closing";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { directory, type DirectoryTransaction } from "../db";
import type { Viewer } from "../session";
import { closingClubs } from "./closing-clubs";
import { forgetInClub, forgetPhotos, withdrawEverything } from "./forget-in-space";
import { requireOwnPassword } from "./own-password";

/**
 * Closes the viewer's account for good. What others need to compare their brews with stays, and leads to nobody; all the
 * rest goes. Each step may be done again, so that one that is interrupted is simply asked for once more.
 */
export async function closeAccount(viewer: Viewer, { password }: Pick<AccountClosing, "password">): Promise<void> {
  const { userId } = viewer;
  await requireOwnPassword(viewer, password);
  requireOrganisers(await closingClubs(directory, userId));
  const memberships = await directory.membership.findMany({
    where: { userId },
    select: { spaceId: true, space: { select: { kind: true } } },
  });
  for (const { spaceId, space } of memberships) {
    if (space.kind === "club") await forgetInClub(spaceId, userId);
    await forgetPhotos(spaceId, userId);
  }
  const ended = await directory.$transaction((tx) => closeInDirectory(tx, userId));
  for (const spaceId of ended) await withdrawEverything(spaceId, userId);
}

function requireOrganisers(clubs: readonly ClosingClub[]): void {
  const waiting = clubs.filter(({ outcome }) => outcome === "needs an organiser").map(({ name }) => name);
  if (waiting.length === 0) return;
  throw new AppError(
    "CONFLICT",
    `You are the last organiser of ${waiting.join(" and of ")}: make somebody else organiser there first, on its page People.`,
  );
}

/** Returns the spaces that ended with the account: the bench, and clubs in which nobody is left. */
async function closeInDirectory(tx: DirectoryTransaction, userId: string): Promise<readonly string[]> {
  // Two organisers of one club who leave at the same moment take turns here, and the second is told.
  await tx.$queryRaw`
    SELECT id FROM space WHERE id IN (SELECT space_id FROM membership WHERE user_id = ${userId}::uuid)
    ORDER BY id FOR UPDATE`;
  requireOrganisers(await closingClubs(tx, userId));
  const ended = await endSpaces(tx, userId);
  const user = await tx.appUser.findUniqueOrThrow({ where: { id: userId }, select: { emailNorm: true } });
  await forgetAccess(tx, userId, user.emailNorm);
  const now = new Date();
  await tx.appUser.update({
    where: { id: userId },
    data: {
      emailNorm: `${userId}@closed.invalid`,
      emailVerifiedAt: null,
      passwordHash: null,
      displayName: "A former member",
      preferences: {},
      mailChanges: false,
      disabledAt: now,
      closedAt: now,
    },
  });
  await writeAudit(tx, { action: "account closed", outcome: "ok", actor: userId });
  return ended;
}

async function endSpaces(tx: DirectoryTransaction, userId: string): Promise<readonly string[]> {
  const alone = await tx.space.findMany({
    where: {
      deletedAt: null,
      memberships: { some: { userId, status: "active" }, none: { status: "active", userId: { not: userId } } },
    },
    select: { id: true },
  });
  const ids = alone.map(({ id }) => id);
  for (const id of ids) {
    const slug = `ended-${id.slice(0, 8)}${id.slice(9, 13)}`;
    await tx.space.update({ where: { id }, data: { deletedAt: new Date(), name: "An ended space", slug } });
  }
  await tx.membership.updateMany({ where: { userId }, data: { status: "left" } });
  return ids;
}

/** Every way in, and every address that leads to the person. */
async function forgetAccess(tx: DirectoryTransaction, userId: string, emailNorm: string): Promise<void> {
  await tx.authSession.deleteMany({ where: { userId } });
  await tx.authAccount.deleteMany({ where: { userId } });
  await tx.pushSubscription.deleteMany({ where: { userId } });
  await tx.calendarToken.deleteMany({ where: { userId } });
  await tx.sensorToken.deleteMany({ where: { userId } });
  await tx.oneTimeToken.deleteMany({ where: { emailNorm } });
  const revokedAt = new Date();
  await tx.invite.updateMany({ where: { createdBy: userId, revokedAt: null }, data: { revokedAt } });
  // Invitations of others to this address.
  await tx.invite.updateMany({ where: { emailNorm, revokedAt: null }, data: { revokedAt } });
  await tx.invite.updateMany({ where: { emailNorm }, data: { emailNorm: null } });
}
