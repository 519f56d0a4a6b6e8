import "server-only";
import { randomInt } from "node:crypto";
import type { NewResult } from "@/lib/model/published-result";
import { FEWEST_BREWERS, measuredBrews, resultOf } from "@/lib/model/result-of-brews";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { CALC_VERSION } from "../calc-version";
import { directory, inSpace, toJson } from "../db";
import { requireAbility } from "../permissions";
import { findRevision } from "../recipes/reads";
import type { Member } from "../session";
import { findSharedBrew } from "../shared-brews/reads";
import { addressFor } from "./address";

/**
 * Shows the figures of a shared brew to everybody, as they are at this moment. They are copied: what is read or
 * corrected later changes nothing of it, and is published as another result.
 */
export async function publishResult(member: Member, order: NewResult): Promise<{ readonly address: string }> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  const { title, recipeId, content } = await readResult(member, order.sharedBrewId);
  const key = { sourceSpaceId: spaceId, id: order.id };
  const row = {
    ...key,
    sharedBrewId: order.sharedBrewId,
    recipeId,
    title,
    content: toJson(content),
    publishedBy: userId,
  };
  const { address, isNew } = await inSpace(spaceId, userId, async (tx) => {
    const { count } = await tx.publicResult.createMany({
      data: [{ ...row, address: addressFor(title), calcVersion: CALC_VERSION }],
      skipDuplicates: true,
    });
    const kept = await tx.publicResult.findUnique({ where: { sourceSpaceId_id: key }, select: { address: true } });
    if (kept === null) throw new Error("a result was published and is not there");
    return { address: kept.address, isNew: count === 1 };
  });
  if (isNew) {
    await writeAudit(directory, { action: "publish", outcome: "ok", actor: userId, spaceId, target: address });
  }
  return { address };
}

async function readResult(member: Member, sharedBrewId: string) {
  const shared = await findSharedBrew(member, sharedBrewId);
  const recipe = shared === null ? null : await findRevision(member, shared.recipeId, shared.recipeRev);
  if (shared === null || recipe === null) throw new AppError("NOT_FOUND", "There is no such shared brew here.");
  const { shown, brewers } = measuredBrews(shared.brews);
  if (brewers < FEWEST_BREWERS) {
    throw new AppError(
      "CONFLICT",
      `A result needs figures measured by at least ${String(FEWEST_BREWERS)} brewers; here it is ${String(brewers)}.`,
    );
  }
  const brewerIds = mixed([...new Set(shown.map(({ brew }) => brew.brewerId))]);
  const content = resultOf({ clubName: member.spaceName, recipe, shown, brewerIds });
  return { title: shared.title, recipeId: shared.recipeId, content };
}

/** In an order that nobody could know: the order of names or of brew days would say who is who. */
function mixed<T>(all: readonly T[]): readonly T[] {
  return all.reduce<readonly T[]>((done, each, i) => done.toSpliced(randomInt(i + 1), 0, each), []);
}

/** Takes a result back. Its address says so from then on, and leads nowhere else. */
export async function withdrawResult(member: Member, address: string): Promise<void> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  const { count } = await inSpace(spaceId, userId, (tx) =>
    tx.publicResult.updateMany({
      where: { address, sourceSpaceId: spaceId, withdrawnAt: null },
      data: { withdrawnAt: new Date(), content: {}, title: "" },
    }),
  );
  if (count === 0) throw new AppError("NOT_FOUND", "Nothing of this club is published at this address now.");
  await writeAudit(directory, { action: "withdraw", outcome: "ok", actor: userId, spaceId, target: address });
}
