import "server-only";
import { randomUUID } from "node:crypto";
import type { NewClub } from "@/lib/model/club";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { directory, isUniqueViolation, type DirectoryTransaction } from "../db";
import type { Viewer } from "../session";

/** Founds a club with the viewer as its organiser. */
export async function foundClub(viewer: Viewer, club: NewClub): Promise<{ readonly slug: string }> {
  try {
    await directory.$transaction((tx) => foundClubFor(tx, viewer.userId, club));
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
    throw new AppError("CONFLICT", `The address “${club.slug}” is taken; choose another one.`, { cause: error });
  }
  return { slug: club.slug };
}

/** The same within a transaction, for an account that the operator makes beside it. */
export async function foundClubFor(tx: DirectoryTransaction, userId: string, { name, slug }: NewClub): Promise<void> {
  const spaceId = randomUUID();
  await tx.space.create({ data: { id: spaceId, kind: "club", slug, name } });
  await tx.membership.create({ data: { spaceId, userId, role: "organiser" } });
  await writeAudit(tx, { action: "club", outcome: "ok", actor: userId, spaceId });
}
