"use server";

import { archiving } from "@/lib/model/ingredient";
import { archiveIngredient, createIngredient, saveIngredient } from "@/lib/server/ingredients/writes";
import { ingredientChangeForm, newIngredientForm } from "./ingredient-form-schema";
import { kept, kindWord, made, type Kept, type Made } from "./keep";

export async function createIngredientAction(
  space: string,
  kind: string,
  previous: Made | null,
  form: FormData,
): Promise<Made> {
  return made(
    { space, previous, form, under: "ingredients" },
    (member) => newIngredientForm(kindWord.parse(kind), member.preferences),
    createIngredient,
  );
}

export async function saveIngredientAction(
  space: string,
  kind: string,
  previous: Kept | null,
  form: FormData,
): Promise<Kept> {
  return kept(
    { space, previous, form },
    (member) => ingredientChangeForm(kindWord.parse(kind), member.preferences),
    saveIngredient,
  );
}

export async function archiveIngredientAction(space: string, previous: Kept | null, form: FormData): Promise<Kept> {
  return kept({ space, previous, form }, () => archiving, archiveIngredient);
}
