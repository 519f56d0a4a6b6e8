import "server-only";
import { recipeContent, type RecipeRevision } from "@/lib/model/recipe-content";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId, isRevisionNumber } from "../record-id";
import type { Member } from "../session";

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
  const nameOf = await displayNames({ spaceId, userId }, [authorId]);
  return {
    id,
    ...rest,
    content: recipeContent.parse(content),
    message: message ?? "",
    authorName: nameOf(authorId),
  };
}
