"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";
import { ActionForm } from "@/lib/ui/action-form";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";

interface OrderFormProps {
  readonly choices: readonly { readonly value: string; readonly text: string }[];
  readonly chosen: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** What is ordered for, in which currency, until when. */
export function OrderForm({ choices, chosen, action }: OrderFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <TextField
            name="title"
            label="Title"
            hint="What the club calls it, such as “Autumn malt order”."
            maxLength={160}
            autoComplete="off"
            error={errors.title}
          />
          <SelectField
            name="sharedBrewId"
            label="Shared brew"
            options={choices}
            defaultValue={chosen}
            error={errors.sharedBrewId}
          />
          <Details errors={errors} />
          <div>
            <SubmitButton pending="Opening…" isPending={isPending}>
              Open the order
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}

/** What an order has beside its title and what it is for. */
function Details({ errors }: { readonly errors: FieldErrors }) {
  return (
    <>
      <TextField
        name="currency"
        label="Currency"
        hint="Three letters, such as EUR."
        defaultValue="EUR"
        maxLength={3}
        autoComplete="off"
        error={errors.currency}
      />
      <TextField
        name="closesAt"
        label="Closing day"
        hint="When you mean to lock it; may stay empty."
        type="date"
        error={errors.closesAt}
      />
      <TextField
        name="note"
        label="Note"
        hint="Where to order, who collects it; may stay empty."
        maxLength={2000}
        autoComplete="off"
        error={errors.note}
      />
    </>
  );
}
