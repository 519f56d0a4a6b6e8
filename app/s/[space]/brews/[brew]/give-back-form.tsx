"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface GiveBackFormProps {
  readonly brewId: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Puts back what a brew took from its lots, for a brew that will not be. */
export function GiveBackForm({ brewId, action }: GiveBackFormProps) {
  return (
    <div className="no-print mt-3">
      <ActionForm action={action}>
        {({ isPending }) => (
          <>
            <input type="hidden" name="brewId" value={brewId} />
            <div>
              <SubmitButton pending="Putting back…" isPending={isPending} kind="quiet">
                Put them back on the shelf
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </div>
  );
}
