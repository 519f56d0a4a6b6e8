import "server-only";
import { oldestCalendarAddress } from "@/lib/model/calendar-address";
import type { Preferences } from "@/lib/model/preferences";
import { ROLES, type Role } from "@/lib/model/roles";
import { SPACE_KINDS, type SpaceKind } from "@/lib/model/space";
import { storedPreferences } from "./accounts/stored-preferences";
import { directory } from "./db";
import { findSession } from "./sessions/reads";
import { storedWord } from "./stored-word";
import { tokenHash } from "./tokens";

/** Often enough to see that a sensor lives, seldom enough that sending is not two writes. */
const USED_EVERY_S = 60;

const SLUG = /^[a-z0-9-]{3,40}$/;

// Not exported, so that only this file can make a Viewer or a Member. It exists for the compiler alone.
declare const proven: unique symbol;

/** Somebody signed in. */
export interface Viewer {
  readonly [proven]: true;
  readonly userId: string;
  readonly displayName: string;
  readonly preferences: Preferences;
}

/** Somebody signed in who belongs to a space, with the role of this moment. */
export interface Member extends Viewer {
  readonly spaceId: string;
  readonly spaceSlug: string;
  readonly spaceName: string;
  readonly spaceKind: SpaceKind;
  readonly role: Role;
}

/** The person behind a session's reference. */
export async function proveViewer(reference: string): Promise<Viewer | null> {
  // The cast is the proof: nothing else makes a Viewer.
  return (await findSession(reference)) as Viewer | null;
}

const MEMBERSHIP = {
  role: true,
  space: { select: { id: true, slug: true, name: true, kind: true } },
} as const;

/** The viewer as a member of a space; null when there is no such space, or they do not belong to it now. */
export async function proveMember(viewer: Viewer, spaceSlug: string): Promise<Member | null> {
  // A part of an address may hold anything, also what the database would not take as a text.
  if (!SLUG.test(spaceSlug)) return null;
  // In one statement, because every request of a club asks it.
  const [row] = await directory.$queryRaw<MembershipRow[]>`
    SELECT m.role, s.id::text AS id, s.slug, s.name, s.kind
    FROM membership m JOIN space s ON s.id = m.space_id AND s.slug = ${spaceSlug} AND s.deleted_at IS NULL
    WHERE m.user_id = ${viewer.userId}::uuid AND m.status = 'active'`;
  if (row === undefined) return null;
  const { role, ...space } = row;
  return toMember(viewer, { role, space });
}

/** The viewer in every space that they belong to now, by its name. */
export async function proveEveryMembership(viewer: Viewer): Promise<readonly Member[]> {
  const memberships = await directory.membership.findMany({
    where: { userId: viewer.userId, status: "active", space: { deletedAt: null } },
    select: MEMBERSHIP,
    orderBy: { space: { name: "asc" } },
  });
  return memberships.map((membership) => toMember(viewer, membership));
}

interface SpaceRow {
  readonly id: string;
  readonly slug: string;
  readonly name: string;
  readonly kind: string;
}

interface MembershipRow extends SpaceRow {
  readonly role: string;
}

interface Membership {
  readonly role: string;
  readonly space: SpaceRow;
}

function toMember(viewer: Viewer, { role, space }: Membership): Member {
  return {
    ...viewer,
    spaceId: space.id,
    spaceSlug: space.slug,
    spaceName: space.name,
    spaceKind: storedWord(SPACE_KINDS, space.kind),
    role: storedWord(ROLES, role),
  };
}

/** A member who acts through a key of a sensor: for one brew, or for all of theirs. */
export interface SensorSender {
  readonly keyId: string;
  readonly brewId: string | null;
  readonly member: Member;
}

interface KeyRow {
  readonly keyId: string;
  readonly brewId: string | null;
  readonly userId: string;
  readonly displayName: string;
  readonly preferences: unknown;
  readonly role: string;
  readonly spaceId: string;
  readonly slug: string;
  readonly name: string;
  readonly kind: string;
  readonly isFresh: boolean;
}

/**
 * Whoever has the key of a sensor, as the member who made it, with that member's role of this moment. It ends when it is
 * revoked or expires, with the membership, and with the account.
 */
export async function proveSensor(token: string): Promise<SensorSender | null> {
  // In one statement, because a sensor is proven as often as it sends.
  const [row] = await directory.$queryRaw<KeyRow[]>`
    SELECT t.id::text AS "keyId", t.brew_id::text AS "brewId", t.user_id::text AS "userId",
           u.display_name AS "displayName", u.preferences, m.role,
           s.id::text AS "spaceId", s.slug, s.name, s.kind,
           coalesce(t.last_used_at > now() - make_interval(secs => ${USED_EVERY_S}::float8), false) AS "isFresh"
    FROM sensor_token t
    JOIN app_user u ON u.id = t.user_id AND u.disabled_at IS NULL
    JOIN space s ON s.id = t.space_id AND s.deleted_at IS NULL
    JOIN membership m ON m.space_id = t.space_id AND m.user_id = t.user_id AND m.status = 'active'
    WHERE t.token_hash = ${tokenHash(token)} AND t.revoked_at IS NULL AND t.expires_at > now()`;
  if (row === undefined) return null;
  const { keyId, brewId, userId, displayName, preferences, role, isFresh } = row;
  if (!isFresh) await directory.sensorToken.updateMany({ where: { id: keyId }, data: { lastUsedAt: new Date() } });
  const viewer: Omit<Viewer, typeof proven> = {
    userId,
    displayName,
    preferences: storedPreferences(preferences),
  };
  const space = { id: row.spaceId, slug: row.slug, name: row.name, kind: row.kind };
  // The cast is the proof, as above.
  return { keyId, brewId, member: toMember(viewer as Viewer, { role, space }) };
}

/**
 * Whoever has the secret address of a calendar, as its owner who may only look. It ends with the address and its
 * time, with the membership, and with the account.
 */
export async function proveCalendarReader(token: string): Promise<Member | null> {
  const row = await directory.calendarToken.findFirst({
    where: {
      tokenHash: tokenHash(token),
      revokedAt: null,
      createdAt: { gt: oldestCalendarAddress(new Date()) },
      user: { disabledAt: null },
      space: { deletedAt: null },
    },
    select: {
      userId: true,
      user: { select: { displayName: true, preferences: true } },
      space: { select: { id: true, slug: true, name: true, kind: true } },
    },
  });
  if (row === null) return null;
  const { userId, user, space } = row;
  const membership = await directory.membership.findFirst({
    where: { userId, spaceId: space.id, status: "active" },
    select: { role: true },
  });
  if (membership === null) return null;
  const reader: Omit<Member, typeof proven> = {
    userId,
    displayName: user.displayName,
    preferences: storedPreferences(user.preferences),
    spaceId: space.id,
    spaceSlug: space.slug,
    spaceName: space.name,
    spaceKind: storedWord(SPACE_KINDS, space.kind),
    role: "guest",
  };
  // The cast is the proof, as above.
  return reader as Member;
}
