import "server-only";
import type { InvitationForNewcomer } from "@/lib/model/invitation";
import { createAccount } from "../accounts/create-account";
import { checkSignIn } from "../accounts/sign-in";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { directory, type DirectoryTransaction } from "../db";
import { hashPassword } from "../password";
import type { Viewer } from "../session";
import { tokenHash } from "../tokens";

/** Somebody signed in needs only the token; a newcomer brings what an account is made of. */
export type Acceptance =
  | { readonly viewer: Viewer; readonly token: string }
  | (InvitationForNewcomer & { readonly viewer: null; readonly ip: string });

const NO_LONGER = "This invitation is not valid any more. Ask the club for a new one.";

/** Takes an invitation: joins the club, and makes the account of a newcomer in the same transaction. */
export async function acceptInvitation(acceptance: Acceptance): Promise<{ readonly spaceSlug: string }> {
  if (acceptance.viewer !== null) {
    const { viewer, token } = acceptance;
    return directory.$transaction((tx) => join(tx, token, () => Promise.resolve(viewer.userId)));
  }
  const { token, email, displayName, password, ip } = acceptance;
  await requireOpen(token, email);
  if ((await directory.appUser.count({ where: { emailNorm: email } })) > 0) {
    return joinWithAccount({ token, email, password, ip });
  }
  // Hashed before the transaction, which should not hold its locks for that long.
  const passwordHash = await hashPassword(password);
  return directory.$transaction((tx) => join(tx, token, () => createAccount(tx, { email, displayName, passwordHash })));
}

async function joinWithAccount(a: {
  readonly token: string;
  readonly email: string;
  readonly password: string;
  readonly ip: string;
}): Promise<{ readonly spaceSlug: string }> {
  const outcome = await checkSignIn(a);
  if (!outcome.ok) {
    throw new AppError(
      "INVALID",
      "This address and password do not go together. If you have an account, sign in and open the link again.",
    );
  }
  return directory.$transaction((tx) => join(tx, a.token, () => Promise.resolve(outcome.userId)));
}

/** Cheap, so that a dead link never costs a password hash. The transaction asks again, and its answer counts. */
async function requireOpen(token: string, email: string): Promise<void> {
  const open = await directory.invite.findUnique({
    where: { tokenHash: tokenHash(token), revokedAt: null, expiresAt: { gt: new Date() } },
    select: { uses: true, maxUses: true, emailNorm: true },
  });
  const isFor = open !== null && (open.emailNorm === null || open.emailNorm === email);
  if (!isFor || open.uses >= open.maxUses) throw new AppError("INVALID", NO_LONGER);
}

async function join(
  tx: DirectoryTransaction,
  token: string,
  person: () => Promise<string>,
): Promise<{ readonly spaceSlug: string }> {
  // One statement both checks and counts, so that simultaneous uses cannot share one.
  const [invite] = await tx.$queryRaw<{ space_id: string; id: string; role: string; email_norm: string | null }[]>`
    UPDATE invite SET uses = uses + 1
    WHERE token_hash = ${tokenHash(token)} AND uses < max_uses AND expires_at > now() AND revoked_at IS NULL
    RETURNING space_id, id, role, email_norm`;
  if (invite === undefined) throw new AppError("INVALID", NO_LONGER);
  const userId = await person();
  await requireAddressee(tx, userId, invite.email_norm);
  const spaceId = invite.space_id;
  const present = await tx.membership.findUnique({ where: { spaceId_userId: { spaceId, userId } } });
  if (present !== null && present.status !== "left") {
    throw new AppError("CONFLICT", "You belong to this club already.");
  }
  await tx.membership.upsert({
    where: { spaceId_userId: { spaceId, userId } },
    create: { spaceId, userId, role: invite.role },
    update: { role: invite.role, status: "active", joinedAt: new Date() },
  });
  await writeAudit(tx, {
    action: "join",
    outcome: "ok",
    actor: userId,
    spaceId,
    target: invite.id,
    meta: { role: invite.role },
  });
  const { slug } = await tx.space.findUniqueOrThrow({ where: { id: spaceId }, select: { slug: true } });
  return { spaceSlug: slug };
}

/** An invitation for one address is for nobody else; the throw takes back the counted use. */
async function requireAddressee(tx: DirectoryTransaction, userId: string, addressee: string | null): Promise<void> {
  if (addressee === null) return;
  const user = await tx.appUser.findUniqueOrThrow({ where: { id: userId }, select: { emailNorm: true } });
  if (user.emailNorm !== addressee) throw new AppError("INVALID", "This invitation is for another e-mail address.");
}
