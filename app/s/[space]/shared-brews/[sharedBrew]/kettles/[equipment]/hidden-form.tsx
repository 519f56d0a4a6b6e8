"use client";

import type { ReactNode } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface HiddenFormProps {
  readonly values: Readonly<Record<string, string | number>>;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
  readonly pending: string;
  readonly kind?: "plain" | "quiet" | "attention";
  readonly children: ReactNode;
}

/** One button, and what it sends. */
export function HiddenForm({ values, action, pending, kind = "plain", children }: HiddenFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <div className="no-print">
          {Object.entries(values).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <SubmitButton pending={pending} isPending={isPending} kind={kind}>
            {children}
          </SubmitButton>
        </div>
      )}
    </ActionForm>
  );
}
