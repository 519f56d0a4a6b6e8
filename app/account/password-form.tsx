"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { changePasswordAction } from "./actions";

/** Present and new password; every device is signed out afterwards. */
export function PasswordForm() {
  return (
    <ActionForm action={changePasswordAction}>
      {({ errors, isPending }) => (
        <>
          <TextField
            name="current"
            label="Present password"
            type="password"
            autoComplete="current-password"
            error={errors.current}
          />
          <TextField
            name="replacement"
            label="New password"
            hint="12 characters or more. A sentence is easy to remember and hard to guess."
            type="password"
            autoComplete="new-password"
            error={errors.replacement}
          />
          <p className="field-hint">Every device is signed out, this one too.</p>
          <div>
            <SubmitButton pending="Changing…" isPending={isPending} kind="quiet">
              Change the password
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
