"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { KeepOutcome } from "@/lib/model/ingredient";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { KeepAnswer } from "./keep-answer";

interface ArchiveFormProps {
  readonly what: "ingredient" | "lot";
  readonly id: string;
  readonly lockVersion: number;
  readonly isArchived: boolean;
  readonly action: (previous: ActionResult<KeepOutcome> | null, form: FormData) => Promise<ActionResult<KeepOutcome>>;
}

/** Puts a record away, or takes it out again. */
export function ArchiveForm({ what, id, lockVersion, isArchived, action }: ArchiveFormProps) {
  return (
    <ActionForm action={action}>
      {({ result, isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="lockVersion" value={lockVersion} />
          <input type="hidden" name="archived" value={isArchived ? "no" : "yes"} />
          <KeepAnswer result={result} what={what} />
          <div>
            <SubmitButton pending="…" isPending={isPending} kind={isArchived ? "quiet" : "attention"}>
              {isArchived ? "Take it out again" : `Put this ${what} away`}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
