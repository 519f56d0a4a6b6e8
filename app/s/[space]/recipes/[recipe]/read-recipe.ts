import { notFound } from "next/navigation";
import { cache } from "react";
import { findDraft, listDrafts } from "@/lib/server/drafts/reads";
import { listEquipment } from "@/lib/server/equipment/reads";
import { listIngredients } from "@/lib/server/ingredients/reads";
import { listRevisions } from "@/lib/server/recipes/list-revisions";
import { findOrigin } from "@/lib/server/recipes/origin";
import { findRecipe } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";

/** Who looks, and the newest revision of a recipe; once for the title and the page. Not found in another club. */
export const readRecipe = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  return { member, recipe: (await findRecipe(member, id)) ?? notFound() };
});

/** All that the page of a recipe asks the database for. */
export async function readRecipePage(space: string, id: string) {
  const { member, recipe } = await readRecipe(space, id);
  const [kettles, revisions, origin, draft, drafts, own] = await Promise.all([
    listEquipment(member),
    listRevisions(member, id),
    findOrigin(member, id),
    findDraft(member, id),
    listDrafts(member, id),
    listIngredients(member),
  ]);
  return { member, recipe, kettles, revisions, origin, draft, drafts, own };
}
