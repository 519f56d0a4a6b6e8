import "server-only";
import { storedCredits, type RecipeOrigin } from "@/lib/model/lineage";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import { proveEveryMembership } from "../proof";
import type { Member } from "../session";

/**
 * Whom a recipe is owed to; null for one that is no copy. Everybody sees titles and names, the original itself only who
 * belongs to its space.
 */
export async function findOrigin(member: Member, id: string): Promise<RecipeOrigin | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const recipe = await inSpace(spaceId, userId, (tx) =>
    tx.recipe.findUnique({
      where: { spaceId_id: { spaceId, id } },
      select: { credits: true, originSpaceId: true, originRecipeId: true, originRev: true },
    }),
  );
  if (recipe === null || recipe.originRecipeId === null) return null;
  const there = (await proveEveryMembership(member)).find((each) => each.spaceId === recipe.originSpaceId);
  return {
    credits: storedCredits.parse(recipe.credits),
    link:
      there === undefined
        ? null
        : { spaceSlug: there.spaceSlug, spaceName: there.spaceName, recipeId: recipe.originRecipeId },
    rev: there === undefined ? null : recipe.originRev,
  };
}
