import "server-only";
import type { Preferences } from "@/lib/model/preferences";
import { directory } from "../db";
import { storedPreferences } from "../accounts/stored-preferences";
import { tokenHash } from "../tokens";
import { touchSession } from "./writes";

/** Often enough for a sliding end, seldom enough that reading a page is not a write. */
const TOUCH_EVERY_MS = 3_600_000;

interface LiveSession {
  readonly userId: string;
  readonly displayName: string;
  readonly preferences: Preferences;
}

/** The person behind a reference, or null when the session is closed, over, or the account is disabled. */
export async function findSession(reference: string): Promise<LiveSession | null> {
  const now = new Date();
  const row = await directory.authSession.findFirst({
    where: {
      tokenHash: tokenHash(reference),
      idleExpiresAt: { gt: now },
      absoluteExpiresAt: { gt: now },
      user: { disabledAt: null },
    },
    select: {
      userId: true,
      lastSeenAt: true,
      absoluteExpiresAt: true,
      user: { select: { displayName: true, preferences: true } },
    },
  });
  if (row === null) return null;
  if (now.getTime() - row.lastSeenAt.getTime() > TOUCH_EVERY_MS) await touchSession(reference, row.absoluteExpiresAt);
  return {
    userId: row.userId,
    displayName: row.user.displayName,
    preferences: storedPreferences(row.user.preferences),
  };
}
