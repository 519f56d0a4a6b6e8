"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { INVITABLE_ROLES } from "@/lib/model/roles";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { ROLE_NAMES } from "@/lib/ui/role-names";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { InvitationLink } from "./invitation-link";

type Made = ActionResult<{ readonly token: string }>;

interface InvitationFormProps {
  readonly action: (previous: Made | null, form: FormData) => Promise<Made>;
}

const ROLE_OPTIONS = INVITABLE_ROLES.map((role) => ({ value: role, text: ROLE_NAMES[role] }));

/** Makes an invitation and shows its link, once. */
export function InvitationForm({ action }: InvitationFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, result, isPending }) => (
        <>
          {result?.status === "ok" && !isPending ? <InvitationLink token={result.data.token} /> : null}
          <SelectField name="role" label="Role" options={ROLE_OPTIONS} error={errors.role} />
          <TextField
            name="email"
            label="For one e-mail address only (may stay empty)"
            hint="Empty: whoever has the link can use it. Nothing is sent; you pass the link on yourself."
            type="email"
            autoComplete="off"
            error={errors.email}
          />
          <div className="grid grid-cols-2 items-end gap-4">
            <NumberField name="maxUses" label="Uses" unit="" defaultValue="1" error={errors.maxUses} />
            <NumberField name="days" label="Ends after" unit="days" defaultValue="7" error={errors.days} />
          </div>
          <div>
            <SubmitButton pending="Making…" isPending={isPending}>
              Make an invitation link
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
