"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { newPublication, withdrawal } from "@/lib/model/publication";
import { formAction } from "@/lib/server/action";
import { publishRecipe, withdrawRecipe } from "@/lib/server/publications/writes";
import { requireMember } from "@/lib/server/session";

export async function publishAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(newPublication, async (order): Promise<void> => {
    const { address } = await publishRecipe(await requireMember(space), order);
    revalidatePath(`/p/${address}`);
    revalidatePath(`/s/${space}/recipes/${order.recipeId}/publish`);
  });
  return run(previous, form);
}

export async function withdrawAction(
  space: string,
  recipe: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(withdrawal, async ({ address }): Promise<void> => {
    await withdrawRecipe(await requireMember(space), address);
    revalidatePath(`/p/${address}`);
    revalidatePath(`/s/${space}/recipes/${recipe}/publish`);
  });
  return run(previous, form);
}
