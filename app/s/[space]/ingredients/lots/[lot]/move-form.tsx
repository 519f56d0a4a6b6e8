"use client";

import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import { HAND_MOVEMENTS, type HandMovement, type IngredientLot } from "@/lib/model/ingredient-lot";
import type { Preferences } from "@/lib/model/preferences";
import { amountHint } from "@/lib/ui/ingredient/amount-text";
import { fieldUnit } from "@/lib/ui/read-field";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";
import { KeepForm, type KeepAction } from "../../keep-form";

interface MoveFormProps {
  readonly lot: IngredientLot;
  readonly preferences: Preferences;
  readonly action: KeepAction;
}

const WORDS: Readonly<Record<HandMovement, string>> = {
  counted: "Counted: so much is there",
  bought: "Bought: so much came",
  received: "Received from an order: so much came",
  used: "Used: so much went",
  "thrown away": "Thrown away: so much went",
};

const OPTIONS = HAND_MOVEMENTS.map((kind) => ({ value: kind, text: WORDS[kind] }));

const NOTE = { button: "Note it", pending: "Noting…" } as const;

/** Corrects what is on hand, or notes what came or went. */
export function MoveForm({ lot, preferences, action }: MoveFormProps) {
  const unit = fieldUnit(ON_HAND_FIELDS[lot.what.kind], preferences);
  return (
    <KeepForm what="lot" record={lot} words={NOTE} action={action}>
      {(errors) => (
        <>
          <SelectField name="kind" label="What happened" options={OPTIONS} error={errors.kind} />
          <TextField
            name="amount"
            label={`Amount, ${unit}`}
            hint={amountHint(lot.what.kind)}
            autoComplete="off"
            error={errors.amount}
          />
          <TextField name="why" label="Why" hint="May stay empty." maxLength={500} error={errors.why} />
        </>
      )}
    </KeepForm>
  );
}
