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

interface SessionRow {
  readonly userId: string;
  readonly displayName: string;
  readonly preferences: unknown;
  readonly lastSeenAt: Date;
  readonly absoluteExpiresAt: Date;
}

/** The person behind a reference, or null when the session is closed, over, or the account is disabled. */
export async function findSession(reference: string): Promise<LiveSession | null> {
  const now = new Date();
  // In one statement, because every request asks it.
  const [row] = await directory.$queryRaw<SessionRow[]>`
    SELECT u.id::text AS "userId", u.display_name AS "displayName", u.preferences,
           a.last_seen_at AS "lastSeenAt", a.absolute_expires_at AS "absoluteExpiresAt"
    FROM auth_session a JOIN app_user u ON u.id = a.user_id AND u.disabled_at IS NULL
    WHERE a.token_hash = ${tokenHash(reference)} AND a.idle_expires_at > ${now} AND a.absolute_expires_at > ${now}`;
  if (row === undefined) return null;
  if (now.getTime() - row.lastSeenAt.getTime() > TOUCH_EVERY_MS) await touchSession(reference, row.absoluteExpiresAt);
  const { userId, displayName, preferences } = row;
  return { userId, displayName, preferences: storedPreferences(preferences) };
}
