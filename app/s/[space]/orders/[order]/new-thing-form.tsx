"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import type { OrderAction } from "./order-action";

/** Kind, unit of the order, and how many of it the unit that is typed has. */
const WHAT = [
  { value: "fermentable/g/1000", text: "Malt or sugar, in kg" },
  { value: "hop/g/1", text: "Hop, in g" },
  { value: "yeast/pcs/1", text: "Yeast, in packs" },
  { value: "salt/g/1", text: "Salt, in g" },
  { value: "acid/mL/1", text: "Acid, in mL" },
  { value: "other/pcs/1", text: "Anything else, in pieces" },
  { value: "other/g/1", text: "Anything else, in g" },
  { value: "other/mL/1", text: "Anything else, in mL" },
] as const;

/** What a member wants that is in nobody's sheet. */
export function NewThingForm({ action }: { readonly action: OrderAction }) {
  return (
    <ActionForm action={action}>
      {({ errors, result, isPending }) => (
        <>
          <SelectField name="what" label="What it is" options={WHAT} error={errors.kind ?? errors.unit} />
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
