"use client";

import { startTransition, useActionState, type ReactElement, type ReactNode, type SubmitEvent } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";
import { ErrorSummary } from "./error-summary";
import { useFormErrors } from "./use-form-errors";

/**
 * A form that posts to a server action: error summary on top, and what was typed stays when the action refuses it.
 *
 * - `action` made by `formAction`; works before the page has its scripts.
 * - `children` the fields, given the answer of the last attempt, its messages by field, and whether it is on its way.
 */
export interface ActionFormProps<T> {
  readonly action: (previous: ActionResult<T> | null, form: FormData) => Promise<ActionResult<T>>;
  readonly children: (state: ActionFormState<T>) => ReactNode;
}

export interface ActionFormState<T> {
  readonly result: ActionResult<T> | null;
  readonly errors: FieldErrors;
  readonly isPending: boolean;
}

export function ActionForm<T>({ action, children }: ActionFormProps<T>): ReactElement {
  const [result, send, isPending] = useActionState<ActionResult<T> | null, FormData>(action, null);
  const errors = useFormErrors(result);

  // React empties a form after its action, also when the action refused it; sending it by hand keeps the input.
  function keepInput(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => send(form));
  }

  return (
    <form action={send} onSubmit={keepInput} noValidate className="flex flex-col items-stretch gap-4">
      <ErrorSummary errors={errors} />
      {children({ result, errors, isPending })}
    </form>
  );
}
