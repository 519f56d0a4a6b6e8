import { recordId } from "./written";
import { revisionNumber } from "./measured";

/** A revision as an address names it: "3" of the recipe at hand, or "hollowmere:<id>:3" of any other. */
export interface RevisionReference {
  /** null for the recipe at hand. */
  readonly recipe: { readonly spaceSlug: string; readonly recipeId: string } | null;
  readonly rev: number;
}

/** What an address names; null where it names nothing. */
export function readReference(text: string | string[] | undefined): RevisionReference | null {
  if (typeof text !== "string") return null;
  const [first = "", recipeId, far] = text.split(":");
  const rev = revisionNumber.safeParse(recipeId === undefined ? first : far);
  if (!rev.success) return null;
  if (recipeId === undefined) return { recipe: null, rev: rev.data };
  return recordId.safeParse(recipeId).success ? { recipe: { spaceSlug: first, recipeId }, rev: rev.data } : null;
}

export function writeReference({ recipe, rev }: RevisionReference): string {
  return recipe === null ? String(rev) : `${recipe.spaceSlug}:${recipe.recipeId}:${String(rev)}`;
}
