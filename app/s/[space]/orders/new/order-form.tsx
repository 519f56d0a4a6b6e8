"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";
import { ActionForm } from "@/lib/ui/action-form";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { DescribedFields } from "../described-fields";

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
      <DescribedFields errors={errors} />
    </>
  );
}
