import "server-only";
import { randomUUID } from "node:crypto";
import { writeAudit } from "../audit";
import type { DirectoryTransaction } from "../db";

export interface NewAccount {
  readonly email: string;
  readonly displayName: string;
  readonly passwordHash: string;
}

/** Makes an account and the bench that every account has: a space of its own, where the owner is organiser. */
export async function createAccount(
  tx: DirectoryTransaction,
  { email, displayName, passwordHash }: NewAccount,
): Promise<string> {
  const userId = randomUUID();
  const spaceId = randomUUID();
  await tx.appUser.create({ data: { id: userId, emailNorm: email, displayName, passwordHash } });
  // The address of a bench says nothing about its owner.
  const slug = `bench-${userId.slice(0, 8)}${userId.slice(9, 13)}`;
  await tx.space.create({ data: { id: spaceId, kind: "person", slug, name: "My bench", ownerUserId: userId } });
  await tx.membership.create({ data: { spaceId, userId, role: "organiser" } });
  await writeAudit(tx, { action: "account", outcome: "ok", actor: userId });
  return userId;
}
