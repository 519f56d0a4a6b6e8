"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface RevokeFeedFormProps {
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Ends the private address; calendar programs that have it are told that there is nothing. */
export function RevokeFeedForm({ action }: RevokeFeedFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <div>
          <SubmitButton pending="Ending…" isPending={isPending} kind="attention">
            End the private address
          </SubmitButton>
        </div>
      )}
    </ActionForm>
  );
}
