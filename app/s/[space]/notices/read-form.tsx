"use client";

import type { ReactNode } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface ReadFormProps {
  readonly ids: readonly string[];
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
  readonly children: ReactNode;
}

/** Marks notices as read. */
export function ReadForm({ ids, action, children }: ReadFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <div>
          <input type="hidden" name="ids" value={ids.join(" ")} />
          <SubmitButton pending="Marking…" isPending={isPending} kind="quiet">
            {children}
          </SubmitButton>
        </div>
      )}
    </ActionForm>
  );
}
