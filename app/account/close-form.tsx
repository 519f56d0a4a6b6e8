"use client";

import { CLOSING_WORDS } from "@/lib/model/account-closing";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { closeAccountAction } from "./actions";

/** The password and words that nobody types by mistake; there is no way back. */
export function CloseForm() {
  return (
    <ActionForm action={closeAccountAction}>
      {({ errors, isPending }) => (
        <>
          <TextField
            name="password"
            label="Your password"
            type="password"
            autoComplete="current-password"
            error={errors.password}
          />
          <TextField
            name="words"
            label={`Type “${CLOSING_WORDS}”`}
            autoComplete="off"
            autoCapitalize="off"
            error={errors.words}
          />
          <div>
            <SubmitButton pending="Closing…" isPending={isPending} kind="attention">
              Close my account for good
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
