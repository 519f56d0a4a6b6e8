"use client";

import type { ClubIngredient } from "@/lib/model/ingredient";
import type { Preferences } from "@/lib/model/preferences";
import { IngredientFields } from "../ingredient-fields";
import { KeepForm, type KeepAction } from "../keep-form";

interface ChangeFormProps {
  readonly ingredient: ClubIngredient;
  readonly preferences: Preferences;
  readonly action: KeepAction;
}

const WORDS = { button: "Keep the changes", pending: "Keeping…" } as const;

/** Changes the figures of the club's own ingredient. */
export function ChangeForm({ ingredient, preferences, action }: ChangeFormProps) {
  const { name, notes, what } = ingredient;
  const acidity = "acidity" in what.figures ? what.figures.acidity : null;
  const values = { name, notes, ...what.figures, ...acidity };
  return (
    <KeepForm what="ingredient" record={ingredient} words={WORDS} action={action}>
      {(errors) => <IngredientFields kind={what.kind} {...{ values, errors, preferences }} />}
    </KeepForm>
  );
}
