import type { RecipeOrigin } from "@/lib/model/lineage";
import type { RevisionSummary } from "@/lib/model/recipe-content";
import { writeReference } from "@/lib/model/revision-reference";

/** A revision as the form offers it. */
export interface RevisionChoice {
  readonly value: string;
  readonly text: string;
}

/** The revisions of the recipe, the newest first, and at the end the one that it was copied of. */
export function revisionChoices(
  revisions: readonly RevisionSummary[],
  origin: RecipeOrigin | null,
): readonly RevisionChoice[] {
  const own = revisions.map(({ rev, message }) => ({
    value: String(rev),
    text: message === "" ? `Revision ${rev}` : `Revision ${rev}: ${message}`,
  }));
  if (origin === null || origin.link === null || origin.rev === null) return own;
  const { spaceSlug, recipeId, spaceName } = origin.link;
  const title = origin.credits.at(-1)?.title ?? "the original";
  const value = writeReference({ recipe: { spaceSlug, recipeId }, rev: origin.rev });
  return [...own, { value, text: `${title} in ${spaceName}, revision ${origin.rev}, the original` }];
}
