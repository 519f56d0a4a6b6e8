"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

export type BeginTrial = (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;

/** Begins a trial, and leads to it. */
export function BeginTrialForm({ begin }: { readonly begin: BeginTrial }) {
  return (
    <div className="no-print">
      <ActionForm action={begin}>
        {({ isPending }) => (
          <div>
            <SubmitButton pending="Beginning…" isPending={isPending} kind="quiet">
              Commission with water
            </SubmitButton>
          </div>
        )}
      </ActionForm>
    </div>
  );
}
