import type { ComponentProps, ReactElement } from "react";
import type { FieldProps } from "./field";
import { TextField } from "./text-field";

/**
 * A number, typed as text: a comma is as good as a point, the wheel changes nothing, and what cannot be read stays for
 * correction. The caller reads it with `parseAmount`.
 *
 * - `label` names the quantity and `unit` its unit; both stand in the label.
 * - `mayBeNegative` for temperatures: the decimal keypad of some phones has no minus.
 */
export type NumberFieldProps = Omit<FieldProps, "children" | "label"> &
  Omit<ComponentProps<"input">, "id" | "name" | "type" | "inputMode" | "children"> & {
    readonly label: string;
    readonly unit: string;
    readonly mayBeNegative?: boolean | undefined;
  };

export function NumberField({ label, unit, mayBeNegative = false, ...rest }: NumberFieldProps): ReactElement {
  return (
    <TextField
      autoComplete="off"
      {...rest}
      label={unit === "" ? label : `${label}, ${unit}`}
      inputMode={mayBeNegative ? "text" : "decimal"}
      className="input-number"
    />
  );
}
