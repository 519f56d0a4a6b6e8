"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { amountHint } from "@/lib/ui/ingredient/amount-text";
import { fieldUnit } from "@/lib/ui/read-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { LotFields } from "../lot-fields";

interface NewLotFormProps {
  readonly kind: IngredientKind;
  readonly name: string;
  readonly names: readonly string[];
  readonly preferences: Preferences;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

const OWNERS = [
  { value: "me", text: "Mine" },
  { value: "club", text: "The club’s" },
];

/** A lot that was brought home: what it is, whose it is and how much of it. */
export function NewLotForm({ kind, name, names, preferences, action }: NewLotFormProps) {
  const unit = fieldUnit(ON_HAND_FIELDS[kind], preferences);
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <div className="grid items-end gap-x-6 gap-y-4 sm:grid-cols-2">
            <TextField
              name="onHand"
              label={`On hand, ${unit}`}
              hint={amountHint(kind)}
              autoComplete="off"
              error={errors.onHand}
            />
            <SelectField name="owner" label="Whose" options={OWNERS} defaultValue="me" error={errors.owner} />
          </div>
          <LotFields {...{ kind, names, errors, preferences }} values={{ name }} />
          <div>
            <SubmitButton pending="Keeping…" isPending={isPending}>
              Keep the lot
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
