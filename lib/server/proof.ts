import "server-only";
import type { Preferences } from "@/lib/model/preferences";
import { ROLES, type Role } from "@/lib/model/roles";
import { SPACE_KINDS, type SpaceKind } from "@/lib/model/space";
import { storedPreferences } from "./accounts/stored-preferences";
import { directory } from "./db";
import { findSession } from "./sessions/reads";
import { storedWord } from "./stored-word";
import { tokenHash } from "./tokens";

/** Often enough to see that a sensor lives, seldom enough that sending is not two writes. */
const USED_EVERY_MS = 60_000;

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
  const membership = await directory.membership.findFirst({
    where: { userId: viewer.userId, status: "active", space: { slug: spaceSlug, deletedAt: null } },
    select: MEMBERSHIP,
  });
  return membership === null ? null : toMember(viewer, membership);
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

interface Membership {
  readonly role: string;
  readonly space: { readonly id: string; readonly slug: string; readonly name: string; readonly kind: string };
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

const KEY_MEMBER = {
  id: true,
  brewId: true,
  userId: true,
  spaceId: true,
  lastUsedAt: true,
  user: { select: { displayName: true, preferences: true } },
} as const;

/**
 * Whoever has the key of a sensor, as the member who made it, with that member's role of this moment. It ends when it is
 * revoked or expires, with the membership, and with the account.
 */
export async function proveSensor(token: string): Promise<SensorSender | null> {
  const now = new Date();
  const row = await directory.sensorToken.findFirst({
    where: {
      tokenHash: tokenHash(token),
      revokedAt: null,
      expiresAt: { gt: now },
      user: { disabledAt: null },
      space: { deletedAt: null },
    },
    select: KEY_MEMBER,
  });
  if (row === null) return null;
  const { id: keyId, brewId, userId, spaceId, user } = row;
  const membership = await directory.membership.findFirst({
    where: { userId, spaceId, status: "active" },
    select: MEMBERSHIP,
  });
  if (membership === null) return null;
  const isFresh = row.lastUsedAt !== null && now.getTime() - row.lastUsedAt.getTime() < USED_EVERY_MS;
  if (!isFresh) await directory.sensorToken.updateMany({ where: { id: keyId }, data: { lastUsedAt: now } });
  const viewer: Omit<Viewer, typeof proven> = {
    userId,
    displayName: user.displayName,
    preferences: storedPreferences(user.preferences),
  };
  // The cast is the proof, as above.
  return { keyId, brewId, member: toMember(viewer as Viewer, membership) };
}

/**
 * Whoever has the secret address of a calendar, as its owner who may only look. It ends with the address, with the
 * membership, and with the account.
 */
export async function proveCalendarReader(token: string): Promise<Member | null> {
  const row = await directory.calendarToken.findFirst({
    where: {
      tokenHash: tokenHash(token),
      revokedAt: null,
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
