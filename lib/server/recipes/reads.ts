import "server-only";
import { recipeContent, type RecipeRevision, type RecipeSummary } from "@/lib/model/recipe-content";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId, isRevisionNumber } from "../record-id";
import type { Member } from "../session";

/** The recipes of the space, the latest change first. */
export async function listRecipes({ spaceId, userId }: Member): Promise<readonly RecipeSummary[]> {
  const rows = await inSpace(spaceId, userId, async (tx) => {
    const recipes = await tx.recipe.findMany({
      where: { spaceId, archivedAt: null },
      select: { id: true, title: true, headRev: true },
    });
    const heads = await tx.recipeRevision.findMany({
      where: { spaceId, OR: recipes.map(({ id, headRev }) => ({ recipeId: id, rev: headRev })) },
      select: { recipeId: true, authorId: true, createdAt: true },
    });
    const headOf = new Map(heads.map((head) => [head.recipeId, head]));
    return recipes.flatMap((recipe) => {
      const head = headOf.get(recipe.id);
      return head === undefined ? [] : [{ ...recipe, authorId: head.authorId, changedAt: head.createdAt }];
    });
  });
  const nameOf = await displayNames(rows.map((row) => row.authorId));
  return rows
    .map(({ authorId, ...row }) => ({ ...row, authorName: nameOf(authorId) }))
    .sort((a, b) => b.changedAt.getTime() - a.changedAt.getTime());
}

/** A recipe with its newest revision. */
export function findRecipe(member: Member, id: string): Promise<RecipeRevision | null> {
  return findAt(member, id, null);
}

export function findRevision(member: Member, id: string, rev: number): Promise<RecipeRevision | null> {
  return findAt(member, id, rev);
}

async function findAt({ spaceId, userId }: Member, id: string, rev: number | null): Promise<RecipeRevision | null> {
  if (!isRecordId(id) || (rev !== null && !isRevisionNumber(rev))) return null;
  const found = await inSpace(spaceId, userId, async (tx) => {
    const recipe = await tx.recipe.findUnique({
      where: { spaceId_id: { spaceId, id }, archivedAt: null },
      select: { title: true, headRev: true },
    });
    if (recipe === null) return null;
    const revision = await tx.recipeRevision.findUnique({
      where: { spaceId_recipeId_rev: { spaceId, recipeId: id, rev: rev ?? recipe.headRev } },
      select: { rev: true, content: true, message: true, calcVersion: true, authorId: true, createdAt: true },
    });
    return revision === null ? null : { ...recipe, ...revision };
  });
  if (found === null) return null;
  const { authorId, content, message, ...rest } = found;
  const nameOf = await displayNames([authorId]);
  return {
    id,
    ...rest,
    content: recipeContent.parse(content),
    message: message ?? "",
    authorName: nameOf(authorId),
  };
}
