"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface WithdrawFormProps {
  readonly address: string;
  readonly rev: number;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Takes a published text back. */
export function WithdrawForm({ address, rev, action }: WithdrawFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="address" value={address} />
          <div>
            <SubmitButton pending="Withdrawing…" isPending={isPending} kind="attention">
              Withdraw revision {rev}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
