"use client";

import type { ReactElement, ReactNode } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "./action-form";
import { SubmitButton } from "./submit-button";

/** Takes back what was published at an address. */
export interface WithdrawFormProps {
  readonly address: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
  /** What the button says. */
  readonly children: ReactNode;
}

export function WithdrawForm({ address, action, children }: WithdrawFormProps): ReactElement {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="address" value={address} />
          <div>
            <SubmitButton pending="Withdrawing…" isPending={isPending} kind="attention">
              {children}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
