import type { ReactElement, ReactNode } from "react";
import { fieldIds } from "./field-ids";

/**
 * Label, hint and error around one control. The control itself comes from the caller, with the ids of `fieldIds`.
 *
 * - `name` of the control, which is also its id, so that an error summary can link to it.
 * - `label` with the unit in it, since suffixes are not read aloud; `hint` before the control; `error` in words.
 */
export interface FieldProps {
  readonly name: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string | undefined;
  readonly children: ReactNode;
}

export function Field({ name, label, hint, error, children }: FieldProps): ReactElement {
  const ids = fieldIds(name);
  return (
    <div className={error === undefined ? "field" : "field field-invalid"}>
      <label className="field-label" htmlFor={ids.control}>
        {label}
      </label>
      {hint === undefined ? null : (
        <span className="field-hint" id={ids.hint}>
          {hint}
        </span>
      )}
      {children}
      {error === undefined ? null : (
        <span className="field-error" id={ids.error}>
          <span className="sr-only">Error: </span>
          {error}
        </span>
      )}
    </div>
  );
}
