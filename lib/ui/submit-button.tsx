"use client";

import type { ReactElement, ReactNode } from "react";
import { useFormStatus } from "react-dom";

/**
 * The button that sends its form. While the form is on its way it says so and sends nothing twice, but it keeps the
 * focus.
 *
 * - `pending` text while sending; `kind` quiet for a second choice, attention for what ends or removes something.
 */
export interface SubmitButtonProps {
  readonly children: ReactNode;
  readonly pending: string;
  readonly kind?: "plain" | "quiet" | "attention";
  /** For a form without an action, whose own state says that it is on its way. */
  readonly isPending?: boolean;
  readonly disabled?: boolean;
}

export function SubmitButton({
  children,
  pending,
  kind = "plain",
  isPending = false,
  disabled = false,
}: SubmitButtonProps): ReactElement {
  const sending = useFormStatus().pending || isPending;
  return (
    <button
      type="submit"
      className={kind === "plain" ? "button" : `button button-${kind}`}
      disabled={disabled}
      aria-disabled={sending}
      onClick={(event) => {
        if (sending) event.preventDefault();
      }}
    >
      <span aria-live="polite">{sending ? pending : children}</span>
    </button>
  );
}
