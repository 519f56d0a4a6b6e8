"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";

type Act = (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;

interface ChangeFormsProps {
  readonly id: string;
  readonly name: string;
  readonly lockVersion: number;
  readonly rename: Act;
  readonly end: Act;
}

/** Another name for a saved comparison, or its end; its maker's and an organiser's. */
export function ChangeForms({ id, name, lockVersion, rename, end }: ChangeFormsProps) {
  const which = (
    <>
      <input type="hidden" name="id" value={id} />
      <input type="hidden" name="lockVersion" value={lockVersion} />
    </>
  );
  return (
    <details className="no-print mt-10 max-w-xl">
      <summary className="target">Rename it or take it away</summary>
      <ActionForm action={rename}>
        {({ errors, isPending }) => (
          <>
            {which}
            <TextField name="name" label="Name" maxLength={120} defaultValue={name} error={errors.name} />
            <div>
              <SubmitButton pending="Renaming…" isPending={isPending} kind="quiet">
                Rename
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
      <ActionForm action={end}>
        {({ isPending }) => (
          <>
            {which}
            <p className="mt-4">The brews stay as they are; only the question and its address go.</p>
            <div>
              <SubmitButton pending="Taking it away…" isPending={isPending} kind="attention">
                Take this comparison away
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </details>
  );
}
