import "server-only";
import type { DraftChange, DraftOutcome } from "@/lib/model/recipe-draft";
import { AppError } from "../app-error";
import { inSpace, isUniqueViolation, toJson, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { ownDraft } from "./reads";

/** More open drafts than a person keeps track of; it also bounds what an account can store. */
const MOST_DRAFTS = 100;

/** Keeps a draft, if no other page of the same person kept a later one. */
export async function saveDraft(member: Member, change: DraftChange): Promise<DraftOutcome> {
  requireAbility(member, "write recipes");
  const { spaceId, userId } = member;
  try {
    return await inSpace(spaceId, userId, (tx) => write(tx, member, change));
  } catch (error) {
    // Two pages began the draft at once; the key let one of them through.
    if (!isUniqueViolation(error)) throw error;
    return inSpace(spaceId, userId, (tx) => late(tx, member, change.id));
  }
}

async function write(tx: SpaceTransaction, member: Member, change: DraftChange): Promise<DraftOutcome> {
  const { spaceId, userId } = member;
  const { id, baseRev, lockVersion, title, kept } = change;
  const savedAt = new Date();
  const data = { baseRev, title, content: toJson(kept) };
  if (lockVersion === 0) {
    if (baseRev !== null) await requireRevision(tx, member, id, baseRev);
    if ((await tx.recipeDraft.count({ where: { spaceId, userId } })) >= MOST_DRAFTS) {
      throw new AppError("CONFLICT", `There are ${String(MOST_DRAFTS)} drafts already: publish or discard some.`);
    }
    const recipeId = baseRev === null ? null : id;
    await tx.recipeDraft.create({ data: { spaceId, userId, id, recipeId, ...data, begunAt: savedAt, savedAt } });
    return { ok: true, lockVersion: 1, savedAt };
  }
  // A server's clock may be set back, and no draft is kept before it was begun.
  const begun = await tx.recipeDraft.findFirst({ where: { spaceId, userId, id }, select: { begunAt: true } });
  const notBefore = begun !== null && begun.begunAt > savedAt ? begun.begunAt : savedAt;
  const { count } = await tx.recipeDraft.updateMany({
    where: { spaceId, userId, id, lockVersion },
    data: { ...data, savedAt: notBefore, lockVersion: { increment: 1 } },
  });
  return count === 1 ? { ok: true, lockVersion: lockVersion + 1, savedAt: notBefore } : late(tx, member, id);
}

async function late(tx: SpaceTransaction, member: Member, id: string): Promise<DraftOutcome> {
  const newer = await ownDraft(tx, member, id);
  return newer === null ? { ok: false, reason: "gone" } : { ok: false, reason: "stale", newer };
}

async function requireRevision(tx: SpaceTransaction, { spaceId }: Member, id: string, rev: number): Promise<void> {
  const found = await tx.recipeRevision.findFirst({
    where: { spaceId, recipeId: id, rev, recipe: { archivedAt: null } },
    select: { rev: true },
  });
  if (found === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
}

/** Throws the member's own draft away; one that is gone already is no error. */
export async function discardDraft(member: Member, id: string): Promise<void> {
  requireAbility(member, "write recipes");
  const { spaceId, userId } = member;
  await inSpace(spaceId, userId, (tx) => endDraft(tx, member, id));
}

/** The same within the transaction that publishes it. */
export async function endDraft(tx: SpaceTransaction, { spaceId, userId }: Member, id: string): Promise<void> {
  await tx.recipeDraft.deleteMany({ where: { spaceId, userId, id } });
}
