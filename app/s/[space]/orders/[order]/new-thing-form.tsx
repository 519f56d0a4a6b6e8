"use client";

import { THINGS_TO_ASK_FOR, type EntryMeasure } from "@/lib/model/order/entered";
import type { OrderKind } from "@/lib/model/order/order-words";
import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { entryUnit } from "@/lib/ui/order/entry";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import type { OrderAction } from "./order-action";

const KIND_WORDS: Readonly<Record<OrderKind, string>> = {
  fermentable: "Malt or sugar",
  hop: "Hop",
  yeast: "Yeast",
  salt: "Salt",
  acid: "Acid",
  other: "Anything else",
};

interface NewThingFormProps {
  readonly preferences: Preferences;
  readonly action: OrderAction;
}

/** What a member wants that is in nobody's sheet. */
export function NewThingForm({ preferences, action }: NewThingFormProps) {
  const what = THINGS_TO_ASK_FOR.map(({ kind, measure }) => ({
    value: `${kind}/${measure}`,
    text: `${KIND_WORDS[kind]}, in ${measureWord(kind, measure, preferences)}`,
  }));
  return (
    <ActionForm action={action}>
      {({ errors, result, isPending }) => (
        <>
          <SelectField name="what" label="What it is" options={what} error={errors.kind ?? errors.unit} />
          <TextField
            name="name"
            label="Name"
            hint="As the recipes name it, so that it is bought together."
            maxLength={80}
            autoComplete="off"
            error={errors.name}
          />
          <NumberField name="amount" label="Amount" unit="in the unit chosen above" error={errors.amount} />
          <div>
            <SubmitButton pending="Adding…" isPending={isPending} kind="quiet">
              I want this too
            </SubmitButton>
          </div>
          {result?.status === "ok" && !isPending ? <p role="status">Added to your part of the order.</p> : null}
        </>
      )}
    </ActionForm>
  );
}

function measureWord(kind: OrderKind, measure: EntryMeasure, preferences: Preferences): string {
  if (measure !== "pcs") return entryUnit(measure, preferences);
  return kind === "yeast" ? "packs" : "pieces";
}
