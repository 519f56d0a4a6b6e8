"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface SeenFormProps {
  readonly id: string;
  readonly version: number;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** The member says that they know this version. */
export function SeenForm({ id, version, action }: SeenFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="version" value={version} />
          <div>
            <SubmitButton pending="Noting…" isPending={isPending} kind="quiet">
              I have seen version {version}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
