"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { newRecipe } from "@/lib/model/recipe-content";
import { recordId } from "@/lib/model/written";
import { action } from "@/lib/server/action";
import { createRecipe } from "@/lib/server/recipes/writes";
import { requireMember } from "@/lib/server/session";
import type { SaveAnswer } from "@/lib/ui/recipe/save-answer";

const recipeOfSpace = newRecipe.extend({ space: z.string(), draftId: recordId });

export const createRecipeAction = action(recipeOfSpace, async ({ space, draftId, ...recipe }): Promise<SaveAnswer> => {
  const member = await requireMember(space);
  const { id } = await createRecipe(member, recipe, draftId);
  redirect(`/s/${member.spaceSlug}/recipes/${id}`);
});
