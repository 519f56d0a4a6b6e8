import { notFound } from "next/navigation";
import { cache } from "react";
import { findRecipe } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";

/** Who looks, and the newest revision of a recipe; once for the title and the page. Not found in another club. */
export const readRecipe = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  return { member, recipe: (await findRecipe(member, id)) ?? notFound() };
});
