"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { newSharedBrew } from "@/lib/model/shared-brew";
import { formAction } from "@/lib/server/action";
import { requireMember } from "@/lib/server/session";
import { createSharedBrew } from "@/lib/server/shared-brews/writes";
import { planFields, windowAndRules } from "../read-plan-form";

/** The form names a revision of a recipe in one choice, and leaves the days empty when there are none yet. */
const sharedBrewForm = z
  .strictObject({
    recipe: z.string().regex(/^[0-9a-f-]{36}\/\d{1,7}$/, "Recipe is not chosen"),
    title: z.string(),
    ...planFields,
  })
  .transform(({ recipe, title, ...fields }): unknown => {
    const [recipeId, rev] = recipe.split("/");
    return { recipeId, rev, title, ...windowAndRules(fields) };
  })
  .pipe(newSharedBrew);

export async function createSharedBrewAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(sharedBrewForm, async (sharedBrew): Promise<void> => {
    const { id } = await createSharedBrew(await requireMember(space), sharedBrew);
    redirect(`/s/${space}/shared-brews/${id}`);
  });
  return run(previous, form);
}
