"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { IngredientFields } from "../ingredient-fields";

interface NewIngredientFormProps {
  readonly kind: IngredientKind;
  readonly preferences: Preferences;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

export function NewIngredientForm({ kind, preferences, action }: NewIngredientFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <IngredientFields {...{ kind, errors, preferences }} values={{}} />
          <div>
            <SubmitButton pending="Keeping…" isPending={isPending}>
              Keep the ingredient
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
