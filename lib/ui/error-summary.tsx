"use client";

import { useEffect, useId, useRef, type ReactElement } from "react";
import type { FieldErrors } from "@/lib/model/field-errors";
import { fieldIds } from "./field-ids";

/**
 * Everything that is wrong with a form, at its top. It takes the focus whenever it changes, and each line leads to its
 * field.
 *
 * - `errors` message by field name; what belongs to no field stands under "".
 */
export interface ErrorSummaryProps {
  readonly errors: FieldErrors;
}

export function ErrorSummary({ errors }: ErrorSummaryProps): ReactElement | null {
  const box = useRef<HTMLDivElement>(null);
  const headingId = useId();
  const lines = Object.entries(errors);

  useEffect(() => {
    box.current?.focus();
  }, [errors]);

  if (lines.length === 0) return null;
  return (
    <div ref={box} tabIndex={-1} role="group" aria-labelledby={headingId} className="notice notice-attention">
      <h2 id={headingId}>There is a problem</h2>
      <ul>
        {lines.map(([name, message]) => (
          <li key={name}>{name === "" ? message : <a href={`#${fieldIds(name).control}`}>{message}</a>}</li>
        ))}
      </ul>
    </div>
  );
}
