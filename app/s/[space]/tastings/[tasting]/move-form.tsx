"use client";

import type { ReactNode } from "react";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { TastingAction } from "../form-result";

interface MoveFormProps {
  /** Opens the question. */
  readonly title: string;
  /** Answers it. */
  readonly button: string;
  readonly pending: string;
  /** Sent along, such as the version that the reader saw. */
  readonly hidden: Readonly<Record<string, string | number>>;
  readonly action: TastingAction;
  /** What it means. */
  readonly children: ReactNode;
}

/** A step that is never taken back: opened first, then confirmed. */
export function MoveForm({ title, button, pending, hidden, action, children }: MoveFormProps) {
  return (
    <details className="no-print mt-6 max-w-xl">
      <summary className="target">{title}</summary>
      <p className="my-2">{children}</p>
      <ActionForm action={action}>
        {({ isPending }) => (
          <>
            {Object.entries(hidden).map(([name, value]) => (
              <input key={name} type="hidden" name={name} value={value} />
            ))}
            <div>
              <SubmitButton pending={pending} isPending={isPending} kind="attention">
                {button}
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </details>
  );
}
