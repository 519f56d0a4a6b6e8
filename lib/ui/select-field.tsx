import type { ComponentProps, ReactElement } from "react";
import { Field, type FieldProps } from "./field";
import { controlAttributes } from "./field-ids";

/** A choice of a few, with its label; `options` are value and text in the order shown. */
export type SelectFieldProps = Omit<FieldProps, "children"> &
  Omit<ComponentProps<"select">, "id" | "name" | "children" | "className"> & {
    readonly options: readonly { readonly value: string; readonly text: string }[];
  };

export function SelectField({ name, label, hint, error, options, ...select }: SelectFieldProps): ReactElement {
  return (
    <Field name={name} label={label} hint={hint} error={error}>
      <select {...select} {...controlAttributes({ name, hint, error })} className="input">
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </Field>
  );
}
