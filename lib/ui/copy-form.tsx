"use client";

import type { ReactElement } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "./action-form";
import { SelectField } from "./select-field";
import { SubmitButton } from "./submit-button";
import { TextField } from "./text-field";

/**
 * Where a copy of a recipe goes and what it is called.
 *
 * - `fixed` what the form sends besides: the revision, and the id that the copy will have.
 * - `targets` the spaces that the reader may write in, by slug.
 */
export interface CopyFormProps {
  readonly fixed: Readonly<Record<string, string>>;
  readonly targets: readonly { readonly value: string; readonly text: string }[];
  readonly title: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

export function CopyForm({ fixed, targets, title, action }: CopyFormProps): ReactElement {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          {Object.entries(fixed).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <SelectField name="into" label="Copy into" options={targets} error={errors.into} />
          <TextField
            name="title"
            label="Title of the copy"
            defaultValue={title}
            maxLength={160}
            autoComplete="off"
            error={errors.title}
          />
          <div>
            <SubmitButton pending="Copying…" isPending={isPending}>
              Copy the recipe
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
