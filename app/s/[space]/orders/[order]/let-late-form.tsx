"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import type { OrderAction } from "./order-action";

interface LetLateFormProps {
  readonly people: readonly { readonly userId: string; readonly name: string }[];
  readonly action: OrderAction;
}

/** Lets one member name a wish although the order is locked. */
export function LetLateForm({ people, action }: LetLateFormProps) {
  const options = people.map(({ userId, name }) => ({ value: userId, text: name }));
  return (
    <details className="mt-2 max-w-xl">
      <summary className="target">Let one member wish late</summary>
      <ActionForm action={action}>
        {({ errors, isPending }) => (
          <>
            <SelectField name="userId" label="Member" options={options} error={errors.userId} />
            <TextField
              name="reason"
              label="Reason"
              hint="Everybody reads it in the history. What it changes is shown to you before it counts."
              maxLength={200}
              autoComplete="off"
              error={errors.reason}
            />
            <div>
              <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
                Let them wish
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </details>
  );
}
