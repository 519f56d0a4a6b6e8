import { randomUUID } from "node:crypto";
import type { Role } from "@/lib/model/roles";
import { createAccount } from "@/lib/server/accounts/create-account";
import { directory } from "@/lib/server/db";
import { hashPassword } from "@/lib/server/password";
import { proveMember, proveViewer, type Member, type Viewer } from "@/lib/server/proof";
import { openSession } from "@/lib/server/sessions/writes";
import { foundClub } from "@/lib/server/spaces/writes";

export const TEST_PASSWORD = "correct horse battery staple";

let passwordHash: Promise<string> | undefined;

/** A new account with an address of its own. */
export async function newAccount(displayName: string): Promise<{ readonly userId: string; readonly email: string }> {
  passwordHash ??= hashPassword(TEST_PASSWORD);
  const email = `${randomUUID()}@example.org`;
  const account = { email, displayName, passwordHash: await passwordHash };
  return { userId: await directory.$transaction((tx) => createAccount(tx, account)), email };
}

/** Somebody new, signed in. */
export async function newViewer(displayName: string): Promise<Viewer> {
  const { userId } = await newAccount(displayName);
  return required(await proveViewer(await openSession({ userId, userAgent: null })));
}

async function memberOf(viewer: Viewer, slug: string): Promise<Member> {
  return required(await proveMember(viewer, slug));
}

/** A club of its own for one test, with one person in each role asked for. */
export async function newClub<R extends Role>(...roles: readonly R[]): Promise<Record<R | "organiser", Member>> {
  const slug = `club-${randomUUID().slice(0, 8)}`;
  const founder = await newViewer("Olga Organiser");
  await foundClub(founder, { name: "Test club", slug });
  const organiser = await memberOf(founder, slug);
  const members: Partial<Record<Role, Member>> = { organiser };
  for (const role of roles) members[role] = await join(organiser, role);
  return members as Record<R | "organiser", Member>; // every role asked for was filled above
}

/** One more person in a club. */
export async function join(organiser: Member, role: Role): Promise<Member> {
  const viewer = await newViewer(`Some ${role}`);
  await directory.membership.create({ data: { spaceId: organiser.spaceId, userId: viewer.userId, role } });
  return memberOf(viewer, organiser.spaceSlug);
}

function required<T>(value: T | null): T {
  if (value === null) throw new Error("the test's own set-up failed");
  return value;
}
