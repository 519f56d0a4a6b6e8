"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";

interface OrganiserFormProps {
  readonly people: readonly { readonly userId: string; readonly displayName: string }[];
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

// Nobody is made organiser by a button that was pressed too early.
const NOBODY = { value: "", text: "Choose somebody" };

/** A club may have several organisers; whoever goes leaves it to another one. */
export function OrganiserForm({ people, action }: OrganiserFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, result, isPending }) => (
        <>
          <SelectField
            name="person"
            label="Person"
            hint="They may do all that you may do here, from their next page on."
            options={[NOBODY, ...people.map(({ userId, displayName }) => ({ value: userId, text: displayName }))]}
            error={errors.person}
          />
          {result?.status === "ok" && !isPending ? <Notice live>Made organiser.</Notice> : null}
          <div>
            <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
              Make organiser
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
