import "server-only";
import { directory } from "../db";
import { newToken, tokenHash } from "../tokens";

const DAY_MS = 86_400_000;
const IDLE_DAYS = 90;
export const ABSOLUTE_DAYS = 365;

/** Opens a session and returns its reference: the only copy, since the table keeps the hash. */
export async function openSession(a: { readonly userId: string; readonly userAgent: string | null }): Promise<string> {
  const reference = newToken();
  const now = Date.now();
  await directory.authSession.create({
    data: {
      tokenHash: tokenHash(reference),
      userId: a.userId,
      userAgent: a.userAgent,
      idleExpiresAt: new Date(now + IDLE_DAYS * DAY_MS),
      absoluteExpiresAt: new Date(now + ABSOLUTE_DAYS * DAY_MS),
    },
  });
  return reference;
}

/** Ends the idle time later, but never after the absolute end. */
export async function touchSession(reference: string, absoluteEnd: Date): Promise<void> {
  const idleEnd = new Date(Math.min(Date.now() + IDLE_DAYS * DAY_MS, absoluteEnd.getTime()));
  // updateMany, because the session may have been closed in between.
  await directory.authSession.updateMany({
    where: { tokenHash: tokenHash(reference) },
    data: { lastSeenAt: new Date(), idleExpiresAt: idleEnd },
  });
}

export async function closeSession(reference: string): Promise<void> {
  await directory.authSession.deleteMany({ where: { tokenHash: tokenHash(reference) } });
}
