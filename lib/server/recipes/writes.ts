import "server-only";
import { randomUUID } from "node:crypto";
import type { NewRecipe, NewRevision } from "@/lib/model/recipe-content";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { AppError } from "../app-error";
import { CALC_VERSION } from "../calc-version";
import { contentHash, sameBytes } from "../content-hash";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import { carryLeftover } from "../exchange/kept-leftover";
import { endDraft } from "../drafts/writes";
import { requireAbility } from "../permissions";
import { LostRace, unlessStale } from "../save-race";
import { fileFigures } from "../search/figures";
import type { Member } from "../session";

/** Makes a recipe of its first revision. The draft that it was written as, if any, ends with it. */
export async function createRecipe(
  member: Member,
  recipe: NewRecipe,
  draftId: string | null = null,
): Promise<{ readonly id: string }> {
  requireAbility(member, "write recipes");
  const { spaceId, userId } = member;
  const id = randomUUID();
  await inSpace(spaceId, userId, async (tx) => {
    await insertRecipes(tx, member, [{ id, ...recipe }]);
    if (draftId !== null) {
      // Somebody's own way on from a recipe that another has revised meanwhile: its draft is called like the recipe.
      await carryLeftover(tx, member, { from: draftId, to: id });
      await endDraft(tx, member, draftId);
    }
  });
  return { id };
}

/** Writes new recipes with their first revisions, all of them or none, in the transaction of the caller. */
export async function insertRecipes(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  recipes: readonly (NewRecipe & { readonly id: string })[],
): Promise<void> {
  await tx.recipe.createMany({
    data: recipes.map(({ id, title }) => ({ spaceId, id, title, headRev: 1, rootId: id, createdBy: userId })),
  });
  await tx.recipeRevision.createMany({
    data: recipes.map(({ id, content, message }) => ({
      spaceId,
      recipeId: id,
      rev: 1,
      content: toJson(content),
      contentHash: contentHash(content),
      calcVersion: CALC_VERSION,
      authorId: userId,
      message,
    })),
  });
  for (const recipe of recipes) await fileFigures(tx, spaceId, recipe);
}

/** Adds a revision to a recipe, if `baseRev` is still the newest one. The writer's draft ends with it. */
export function saveRevision(member: Member, revision: NewRevision): Promise<SaveOutcome> {
  requireAbility(member, "write recipes");
  return unlessStale(
    () => insertRevision(member, revision),
    () => presentHead(member, revision.id),
  );
}

function insertRevision(member: Member, { id, baseRev, title, content, message }: NewRevision): Promise<SaveOutcome> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx): Promise<SaveOutcome> => {
    const recipe = await tx.recipe.findUnique({
      where: { spaceId_id: { spaceId, id }, archivedAt: null },
      select: { title: true, headRev: true },
    });
    if (recipe === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
    if (recipe.headRev !== baseRev) return { ok: false, reason: "stale", headRev: recipe.headRev };
    const base = await tx.recipeRevision.findUniqueOrThrow({
      where: { spaceId_recipeId_rev: { spaceId, recipeId: id, rev: baseRev } },
      select: { contentHash: true },
    });
    const hash = contentHash(content);
    if (recipe.title === title && sameBytes(base.contentHash, hash)) return { ok: false, reason: "unchanged" };

    const rev = baseRev + 1;
    await tx.recipeRevision.create({
      data: {
        spaceId,
        recipeId: id,
        rev,
        parentRev: baseRev,
        content: toJson(content),
        contentHash: hash,
        calcVersion: CALC_VERSION,
        authorId: userId,
        message,
      },
    });
    const { count } = await tx.recipe.updateMany({
      where: { spaceId, id, headRev: baseRev },
      data: { headRev: rev, title },
    });
    if (count !== 1) throw new LostRace();
    await fileFigures(tx, spaceId, { id, content });
    await endDraft(tx, member, id);
    return { ok: true, rev };
  });
}

async function presentHead({ spaceId, userId }: Member, id: string): Promise<number> {
  const recipe = await inSpace(spaceId, userId, (tx) =>
    tx.recipe.findUniqueOrThrow({ where: { spaceId_id: { spaceId, id } }, select: { headRev: true } }),
  );
  return recipe.headRev;
}
