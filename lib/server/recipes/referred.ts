import "server-only";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import type { RevisionReference } from "@/lib/model/revision-reference";
import { proveMember } from "../proof";
import type { Member } from "../session";
import { findRevision } from "./reads";

/** The revision that an address names, beside the recipe `id`; null also where it is of a space of others. */
export async function findReferred(
  member: Member,
  id: string,
  { recipe, rev }: RevisionReference,
): Promise<RecipeRevision | null> {
  if (recipe === null) return findRevision(member, id, rev);
  const there = await proveMember(member, recipe.spaceSlug);
  return there === null ? null : findRevision(there, recipe.recipeId, rev);
}
