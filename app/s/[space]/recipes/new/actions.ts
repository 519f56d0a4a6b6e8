"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { newRecipe } from "@/lib/model/recipe-content";
import { action } from "@/lib/server/action";
import { createRecipe } from "@/lib/server/recipes/writes";
import { requireMember } from "@/lib/server/session";
import type { SaveAnswer } from "@/lib/ui/recipe/save-answer";

const recipeOfSpace = newRecipe.extend({ space: z.string() });

export const createRecipeAction = action(recipeOfSpace, async ({ space, ...recipe }): Promise<SaveAnswer> => {
  const member = await requireMember(space);
  const { id } = await createRecipe(member, recipe);
  redirect(`/s/${member.spaceSlug}/recipes/${id}`);
});
