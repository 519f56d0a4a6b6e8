"use client";

import type { ReactNode } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { KeepOutcome } from "@/lib/model/ingredient";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { KeepAnswer } from "./keep-answer";

export type KeepAction = (
  previous: ActionResult<KeepOutcome> | null,
  form: FormData,
) => Promise<ActionResult<KeepOutcome>>;

interface KeepFormProps {
  readonly what: "ingredient" | "lot";
  /** The record as it was read. */
  readonly record: { readonly id: string; readonly lockVersion: number };
  readonly words: { readonly button: string; readonly pending: string };
  readonly action: KeepAction;
  /** The fields, given the messages by field. */
  readonly children: (errors: FieldErrors) => ReactNode;
}

/** A form that changes a record of the stock, and tells whoever was second. */
export function KeepForm({ what, record, words, action, children }: KeepFormProps) {
  return (
    <ActionForm action={action}>
      {({ result, errors, isPending }) => (
        <>
          <input type="hidden" name="id" value={record.id} />
          <input type="hidden" name="lockVersion" value={record.lockVersion} />
          {children(errors)}
          <KeepAnswer result={result} what={what} />
          <div>
            <SubmitButton pending={words.pending} isPending={isPending}>
              {words.button}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
