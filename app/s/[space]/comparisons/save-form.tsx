"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { ComparisonQuestion } from "@/lib/model/summary/question";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";

interface SaveFormProps {
  /** Made with the page, so that sending twice keeps it once. */
  readonly id: string;
  readonly question: ComparisonQuestion;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Keeps the question under a name, at an address of its own. */
export function SaveForm({ id, question, action }: SaveFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          {Object.entries(question).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value ?? ""} />
          ))}
          <TextField name="name" label="Name" maxLength={120} autoComplete="off" error={errors.name ?? errors.to} />
          <div>
            <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
              Save this comparison
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
