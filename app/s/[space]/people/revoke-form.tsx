"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface RevokeFormProps {
  readonly id: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Ends an invitation before its time; its link stops working at once. */
export function RevokeForm({ id, action }: RevokeFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <SubmitButton pending="Ending…" isPending={isPending} kind="attention">
            Revoke
          </SubmitButton>
        </>
      )}
    </ActionForm>
  );
}
