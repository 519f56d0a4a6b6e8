import "server-only";
import type { RecipeToExport } from "@/lib/model/exchange/export-file";
import { recipeContent } from "@/lib/model/recipe-content";
import { givenNames } from "../accounts/names";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { isRecordId, isRevisionNumber } from "../record-id";
import type { Member } from "../session";
import { storedLeftover } from "./kept-leftover";

/** Recipes as they go into a file: in their newest revisions, or one recipe in the revision asked for. */
export async function recipesToExport(
  { spaceId, userId }: Member,
  { ids, rev }: { readonly ids: readonly string[]; readonly rev: number | null },
): Promise<readonly RecipeToExport[]> {
  if (!ids.every(isRecordId) || (rev !== null && !isRevisionNumber(rev))) throw notThere();
  const found = await inSpace(spaceId, userId, async (tx) => {
    const recipes = await tx.recipe.findMany({
      where: { spaceId, id: { in: [...ids] }, archivedAt: null },
      select: { id: true, title: true, headRev: true },
    });
    const revisions = await tx.recipeRevision.findMany({
      where: { spaceId, OR: recipes.map(({ id, headRev }) => ({ recipeId: id, rev: rev ?? headRev })) },
      select: { recipeId: true, rev: true, content: true, authorId: true },
    });
    const leftovers = await tx.recipeLeftover.findMany({
      where: { spaceId, recipeId: { in: recipes.map(({ id }) => id) } },
      select: { recipeId: true, rev: true, format: true, version: true, leftover: true },
      orderBy: { rev: "desc" },
    });
    return { recipes, revisions, leftovers };
  });
  const nameOf = await givenNames(
    { spaceId, userId },
    found.revisions.map(({ authorId }) => authorId),
  );
  return ids.map((id) => {
    const recipe = found.recipes.find((row) => row.id === id);
    const revision = found.revisions.find((row) => row.recipeId === id);
    if (recipe === undefined || revision === undefined) throw notThere();
    // Revisions of a recipe follow one another, so the nearest ancestor is the nearest one before.
    const kept = found.leftovers.find((row) => row.recipeId === id && row.rev <= revision.rev);
    return {
      title: recipe.title,
      author: nameOf(revision.authorId),
      content: recipeContent.parse(revision.content),
      leftover: kept === undefined ? null : storedLeftover(kept),
    };
  });
}

function notThere(): AppError {
  return new AppError("NOT_FOUND", "There is no such recipe here.");
}
