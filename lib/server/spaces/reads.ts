import "server-only";
import { ROLES, type Role } from "@/lib/model/roles";
import { SPACE_KINDS, type SpaceKind } from "@/lib/model/space";
import { directory } from "../db";
import type { Member, Viewer } from "../session";
import { storedWord } from "../stored-word";

export interface SpaceSummary {
  readonly slug: string;
  readonly name: string;
  readonly kind: SpaceKind;
  readonly role: Role;
}

/** The spaces of one person: their own bench and their clubs, by name. */
export async function listSpaces(viewer: Viewer): Promise<readonly SpaceSummary[]> {
  const rows = await directory.membership.findMany({
    where: { userId: viewer.userId, status: "active", space: { deletedAt: null } },
    select: { role: true, space: { select: { slug: true, name: true, kind: true } } },
    orderBy: { space: { name: "asc" } },
  });
  return rows.map(({ role, space }) => ({
    slug: space.slug,
    name: space.name,
    kind: storedWord(SPACE_KINDS, space.kind),
    role: storedWord(ROLES, role),
  }));
}

export interface Person {
  readonly userId: string;
  readonly displayName: string;
  readonly role: Role;
  readonly joinedAt: Date;
}

/** Who belongs to the space now, by name. */
export async function listPeople(member: Member): Promise<readonly Person[]> {
  const rows = await directory.membership.findMany({
    where: { spaceId: member.spaceId, status: "active" },
    select: { userId: true, role: true, joinedAt: true, user: { select: { displayName: true } } },
    orderBy: { user: { displayName: "asc" } },
  });
  return rows.map(({ userId, role, joinedAt, user }) => ({
    userId,
    joinedAt,
    role: storedWord(ROLES, role),
    displayName: user.displayName,
  }));
}
