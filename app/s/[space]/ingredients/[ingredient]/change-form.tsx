"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { ClubIngredient, KeepOutcome } from "@/lib/model/ingredient";
import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { IngredientFields } from "../ingredient-fields";
import { KeepAnswer } from "../keep-answer";

interface ChangeFormProps {
  readonly ingredient: ClubIngredient;
  readonly preferences: Preferences;
  readonly action: (previous: ActionResult<KeepOutcome> | null, form: FormData) => Promise<ActionResult<KeepOutcome>>;
}

/** Changes the figures of the club's own ingredient. */
export function ChangeForm({ ingredient, preferences, action }: ChangeFormProps) {
  const { id, lockVersion, name, notes, what } = ingredient;
  const acidity = "acidity" in what.figures ? what.figures.acidity : null;
  const values = { name, notes, ...what.figures, ...acidity };
  return (
    <ActionForm action={action}>
      {({ result, errors, isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="lockVersion" value={lockVersion} />
          <IngredientFields kind={what.kind} {...{ values, errors, preferences }} />
          <KeepAnswer result={result} what="ingredient" />
          <div>
            <SubmitButton pending="Keeping…" isPending={isPending}>
              Keep the changes
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
