import "server-only";
import { randomUUID } from "node:crypto";
import { storedCredits, withCredit, type Credit, type NewCopy } from "@/lib/model/lineage";
import { recipeContent, type NewRevision, type RecipeContent } from "@/lib/model/recipe-content";
import { givenNames } from "../accounts/names";
import { AppError } from "../app-error";
import { CALC_VERSION } from "../calc-version";
import { contentHash } from "../content-hash";
import { inSpace, isUniqueViolation, toJson, type SpaceTransaction } from "../db";
import { endDraft } from "../drafts/writes";
import { insertLeftover, leftoverAt, type KeptLeftover } from "../exchange/kept-leftover";
import { requireAbility } from "../permissions";
import { fileFigures } from "../search/figures";
import type { Member } from "../session";

/** A revision that may be copied, with what its copies owe to it. */
export interface Original {
  readonly spaceId: string;
  readonly recipeId: string;
  readonly rev: number;
  readonly rootId: string;
  readonly hash: Uint8Array<ArrayBuffer>;
  readonly content: RecipeContent;
  /** Whom a copy of it credits. */
  readonly credits: readonly Credit[];
  /** What the file that it came out of left over; null where it came out of none. */
  readonly leftover: KeptLeftover | null;
}

/**
 * Copies a revision that the reader sees into a space that they write in: their own bench, another club or the same one.
 * The copy keeps its origin and the credit.
 */
export async function copyRevision(source: Member, target: Member, copy: NewCopy): Promise<{ readonly id: string }> {
  if (source.userId !== target.userId) throw new Error("a copy is made by one person");
  const original = await readOriginal(source, copy);
  if (original === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
  return keepCopy(target, original, copy);
}

async function readOriginal(
  { spaceId, userId }: Member,
  { recipeId, rev }: Pick<NewCopy, "recipeId" | "rev">,
): Promise<Original | null> {
  const found = await inSpace(spaceId, userId, async (tx) => {
    const revision = await tx.recipeRevision.findUnique({
      where: { spaceId_recipeId_rev: { spaceId, recipeId, rev }, recipe: { archivedAt: null } },
      select: {
        content: true,
        contentHash: true,
        authorId: true,
        recipe: { select: { title: true, rootId: true, credits: true } },
      },
    });
    return revision === null ? null : { ...revision, leftover: await leftoverAt(tx, { spaceId, recipeId, rev }) };
  });
  if (found === null) return null;
  const { title, rootId, credits } = found.recipe;
  const nameOf = await givenNames({ spaceId, userId }, [found.authorId]);
  return {
    spaceId,
    recipeId,
    rev,
    rootId,
    hash: found.contentHash,
    leftover: found.leftover,
    content: recipeContent.parse(found.content),
    credits: withCredit(storedCredits.parse(credits), { title, author: nameOf(found.authorId) }),
  };
}

/** Writes a copy of what has been read, by whichever right it was read. */
export async function keepCopy(
  target: Member,
  original: Original,
  { id, title }: Pick<NewCopy, "id" | "title">,
): Promise<{ readonly id: string }> {
  requireAbility(target, "write recipes");
  try {
    await inSpace(target.spaceId, target.userId, (tx) => insertCopy(tx, target, original, { id, title }));
  } catch (error) {
    if (!isUniqueViolation(error) || !(await isSameCopy(target, original, id))) throw error;
  }
  return { id };
}

/**
 * Keeps a draft as a recipe of its own, when somebody else published first. It goes back to the revision that the draft
 * was based on, and credits it; the draft ends with it.
 */
export async function keepAsCopy(member: Member, draft: NewRevision): Promise<{ readonly id: string }> {
  requireAbility(member, "write recipes");
  const { id: recipeId, baseRev, title, content, message } = draft;
  const original = await readOriginal(member, { recipeId, rev: baseRev });
  if (original === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
  const id = randomUUID();
  await inSpace(member.spaceId, member.userId, async (tx) => {
    await insertCopy(tx, member, { ...original, content }, { id, title, message });
    await endDraft(tx, member, recipeId);
  });
  return { id };
}

async function insertCopy(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  original: Original,
  { id, title, message = "" }: Pick<NewCopy, "id" | "title"> & { readonly message?: string },
): Promise<void> {
  const { content } = original;
  await tx.recipe.create({
    data: {
      spaceId,
      id,
      title,
      headRev: 1,
      rootId: original.rootId,
      originSpaceId: original.spaceId,
      originRecipeId: original.recipeId,
      originRev: original.rev,
      originHash: original.hash,
      credits: toJson(original.credits),
      createdBy: userId,
    },
  });
  await tx.recipeRevision.create({
    data: {
      spaceId,
      recipeId: id,
      rev: 1,
      content: toJson(content),
      contentHash: contentHash(content),
      calcVersion: CALC_VERSION,
      authorId: userId,
      message,
    },
  });
  if (original.leftover !== null)
    await insertLeftover(tx, { spaceId, userId }, { recipeId: id, kept: original.leftover });
  await fileFigures(tx, spaceId, { id, content });
}

/** A form that is sent twice asks for one copy; anything else under this id is somebody else's record. */
async function isSameCopy({ spaceId, userId }: Member, original: Original, id: string): Promise<boolean> {
  const there = await inSpace(spaceId, userId, (tx) =>
    tx.recipe.findUnique({
      where: { spaceId_id: { spaceId, id } },
      select: { createdBy: true, originSpaceId: true, originRecipeId: true, originRev: true },
    }),
  );
  return (
    there?.createdBy === userId &&
    there.originSpaceId === original.spaceId &&
    there.originRecipeId === original.recipeId &&
    there.originRev === original.rev
  );
}
