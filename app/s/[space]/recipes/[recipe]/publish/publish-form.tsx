"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";

interface PublishFormProps {
  readonly recipeId: string;
  readonly rev: number;
  /** The name that stands there if it is ticked; null where the author is somebody else. */
  readonly ownName: string | null;
  readonly otherwise: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Shows one revision to everybody; who sees what stands beside the button. */
export function PublishForm({ recipeId, rev, ownName, otherwise, action }: PublishFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending, result }) => (
        <>
          <input type="hidden" name="recipeId" value={recipeId} />
          <input type="hidden" name="rev" value={rev} />
          {ownName === null ? (
            <p>The page says that it is by {otherwise}: only authors put their own names on a public page.</p>
          ) : (
            <label className="target gap-3">
              <input type="checkbox" name="named" value="yes" className="size-6" />
              With my name, {ownName}; otherwise it says “by {otherwise}”
            </label>
          )}
          {result?.status === "ok" && !isPending ? <Notice live>Published.</Notice> : null}
          <div>
            <SubmitButton pending="Publishing…" isPending={isPending}>
              Publish revision {rev}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
