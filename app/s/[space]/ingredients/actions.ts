"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { ActionResult } from "@/lib/model/action-result";
import { archiving, type KeepOutcome } from "@/lib/model/ingredient";
import { INGREDIENT_KINDS } from "@/lib/model/ingredient-kinds";
import { oneOf } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { archiveIngredient, createIngredient, saveIngredient } from "@/lib/server/ingredients/writes";
import { requireMember } from "@/lib/server/session";
import { ingredientChangeForm, newIngredientForm } from "./ingredient-form-schema";

const kindWord = oneOf("Kind", INGREDIENT_KINDS);

export async function createIngredientAction(
  space: string,
  kind: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const member = await requireMember(space);
  // The kind is bound to the action by the page, and still comes from the request.
  const schema = newIngredientForm(kindWord.parse(kind), member.preferences);
  const run = formAction(schema, async (ingredient): Promise<void> => {
    const { id } = await createIngredient(member, ingredient);
    redirect(`/s/${member.spaceSlug}/ingredients/${id}`);
  });
  return run(previous, form);
}

export async function saveIngredientAction(
  space: string,
  kind: string,
  previous: ActionResult<KeepOutcome> | null,
  form: FormData,
): Promise<ActionResult<KeepOutcome>> {
  const member = await requireMember(space);
  const schema = ingredientChangeForm(kindWord.parse(kind), member.preferences);
  const run = formAction(schema, async (change) => {
    const outcome = await saveIngredient(member, change);
    if (outcome.ok) revalidatePath(`/s/${member.spaceSlug}/ingredients`, "layout");
    return outcome;
  });
  return run(previous, form);
}

export async function archiveIngredientAction(
  space: string,
  previous: ActionResult<KeepOutcome> | null,
  form: FormData,
): Promise<ActionResult<KeepOutcome>> {
  const member = await requireMember(space);
  const run = formAction(archiving, async (change) => {
    const outcome = await archiveIngredient(member, change);
    if (outcome.ok) revalidatePath(`/s/${member.spaceSlug}/ingredients`, "layout");
    return outcome;
  });
  return run(previous, form);
}
