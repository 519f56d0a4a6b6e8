"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface WithdrawFormProps {
  readonly id: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Takes a whole import back, as long as none of its recipes has been revised or brewed. */
export function WithdrawForm({ id, action }: WithdrawFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <SubmitButton pending="Withdrawing…" isPending={isPending} kind="attention">
            Withdraw this import
          </SubmitButton>
        </>
      )}
    </ActionForm>
  );
}
