import "server-only";
import { randomUUID } from "node:crypto";
import type { NewSharedBrew } from "@/lib/model/shared-brew";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";

/** Calls the club to brew one revision of a recipe. */
export async function createSharedBrew(
  member: Member,
  { recipeId, rev, title, plannedAt }: NewSharedBrew,
): Promise<{ readonly id: string }> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  const id = randomUUID();
  await inSpace(spaceId, userId, async (tx) => {
    const revision = await tx.recipeRevision.findUnique({
      where: { spaceId_recipeId_rev: { spaceId, recipeId, rev } },
      select: { rev: true },
    });
    if (revision === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
    await tx.sharedBrew.create({
      data: { spaceId, id, recipeId, recipeRev: rev, title, plannedAt, state: "open", createdBy: userId },
    });
  });
  return { id };
}
