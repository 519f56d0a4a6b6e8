import "server-only";
import type { PasswordChange } from "@/lib/model/credentials";
import type { MailChoice } from "@/lib/model/mail-choice";
import type { Preferences } from "@/lib/model/preferences";
import { writeAudit } from "../audit";
import { directory } from "../db";
import { hashPassword } from "../password";
import type { Viewer } from "../session";
import { requireOwnPassword } from "./own-password";

export async function savePreferences(viewer: Viewer, preferences: Preferences): Promise<void> {
  await directory.appUser.update({ where: { id: viewer.userId }, data: { preferences: { ...preferences } } });
}

/** Whether changes that concern the account are also told by e-mail. */
export async function saveMailChoice(viewer: Viewer, { changes }: MailChoice): Promise<void> {
  await directory.appUser.update({ where: { id: viewer.userId }, data: { mailChanges: changes } });
}

export async function findMailChoice(viewer: Viewer): Promise<MailChoice> {
  const { mailChanges } = await directory.appUser.findUniqueOrThrow({
    where: { id: viewer.userId },
    select: { mailChanges: true },
  });
  return { changes: mailChanges };
}

/** Ends every session of the account, this one too: the next request on any device finds nobody signed in. */
export async function signOutEverywhere(viewer: Viewer): Promise<void> {
  await directory.$transaction(async (tx) => {
    await tx.authSession.deleteMany({ where: { userId: viewer.userId } });
    await writeAudit(tx, { action: "sign-out everywhere", outcome: "ok", actor: viewer.userId });
  });
}

/** Changes the password and ends every session, because whoever knew the old one may have opened one. */
export async function changePassword(viewer: Viewer, { current, replacement }: PasswordChange): Promise<void> {
  await requireOwnPassword(viewer, current);
  const nextHash = await hashPassword(replacement);
  await directory.$transaction(async (tx) => {
    await tx.appUser.update({ where: { id: viewer.userId }, data: { passwordHash: nextHash } });
    await tx.authSession.deleteMany({ where: { userId: viewer.userId } });
    await writeAudit(tx, { action: "password", outcome: "ok", actor: viewer.userId });
  });
}
