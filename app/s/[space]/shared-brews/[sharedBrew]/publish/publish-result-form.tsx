"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";

interface PublishResultFormProps {
  /** Of the result that will be, so that the same form sent twice publishes once. */
  readonly id: string;
  readonly sharedBrewId: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Shows the figures of this moment to everybody. */
export function PublishResultForm({ id, sharedBrewId, action }: PublishResultFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending, result }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="sharedBrewId" value={sharedBrewId} />
          {result?.status === "ok" && !isPending ? <Notice live>Published.</Notice> : null}
          <div>
            <SubmitButton pending="Publishing…" isPending={isPending}>
              Publish the figures of now
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
