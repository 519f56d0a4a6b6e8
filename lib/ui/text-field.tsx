import type { ComponentProps, ReactElement } from "react";
import { Field, type FieldProps } from "./field";
import { controlAttributes } from "./field-ids";

/** A line of text with its label. Everything else is an attribute of the input. */
export type TextFieldProps = Omit<FieldProps, "children"> & Omit<ComponentProps<"input">, "id" | "name" | "children">;

export function TextField({ name, label, hint, error, className, ...input }: TextFieldProps): ReactElement {
  return (
    <Field name={name} label={label} hint={hint} error={error}>
      <input
        type="text"
        {...input}
        {...controlAttributes({ name, hint, error })}
        className={className === undefined ? "input" : `input ${className}`}
      />
    </Field>
  );
}
