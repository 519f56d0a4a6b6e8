"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";

export type DropAction = (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;

interface DropFormProps {
  readonly lockVersion: number;
  readonly hasReadings: boolean;
  readonly action: DropAction;
}

/** Drops a planned brew, once it is opened and confirmed. */
export function DropForm({ lockVersion, hasReadings, action }: DropFormProps) {
  return (
    <details className="no-print mt-3 max-w-xl">
      <summary className="target">Drop this brew</summary>
      <p className="my-2">
        It will not be brewed: what it took from its lots goes back on the shelf, and it counts in no comparison. This
        cannot be taken back.
      </p>
      <ActionForm action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="lockVersion" value={lockVersion} />
            <TextField
              name="why"
              label="Reason"
              hint={hasReadings ? "Readings were written already, so say why." : "May stay empty."}
              maxLength={500}
              autoComplete="off"
              error={errors.why}
            />
            <div>
              <SubmitButton pending="Dropping…" isPending={isPending} kind="attention">
                Drop it for good
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </details>
  );
}
