"use client";

import type { Preferences } from "@/lib/model/preferences";
import { NumberField } from "@/lib/ui/number-field";
import { fieldUnit } from "@/lib/ui/read-field";
import { SelectField } from "@/lib/ui/select-field";
import type { FormField } from "./form-shape";
import type { MeasureForm } from "./use-measure-form";

interface MeasureFieldsProps {
  readonly fields: readonly FormField[];
  readonly form: MeasureForm;
  /** Tells the fields of this form from those of others on the page. */
  readonly name: string;
  readonly preferences: Preferences;
}

/** The fields of a form; what rarely changes stands behind a line that can be opened. */
export function MeasureFields(props: MeasureFieldsProps) {
  const { fields, form } = props;
  const details = fields.filter((field) => field.kind === "number" && field.isDetail === true);
  const hasWrongDetail = details.some(({ name }) => form.errors[name] !== undefined);
  return (
    <>
      <div className="grid items-end gap-3 sm:grid-cols-2">
        {fields
          .filter((field) => !details.includes(field))
          .map((field) => (
            <MeasureField key={field.name} {...props} field={field} />
          ))}
      </div>
      {details.length === 0 ? null : (
        <details open={hasWrongDetail ? true : undefined}>
          <summary className="target">How sure</summary>
          <div className="grid items-end gap-3 pb-2 sm:grid-cols-2">
            {details.map((field) => (
              <MeasureField key={field.name} {...props} field={field} />
            ))}
          </div>
        </details>
      )}
    </>
  );
}

function MeasureField({ field, form, name, preferences }: MeasureFieldsProps & { readonly field: FormField }) {
  const common = {
    name: `${name}-${field.name}`,
    value: form.texts[field.name] ?? "",
    error: form.errors[field.name],
  };
  if (field.kind === "choice") {
    return (
      <SelectField
        {...common}
        label={field.label}
        options={field.options}
        onChange={(event) => form.type(field.name, event.target.value)}
      />
    );
  }
  return (
    <NumberField
      {...common}
      label={field.field.label}
      unit={fieldUnit(field.field, preferences)}
      hint={field.hint}
      maxLength={24}
      mayBeNegative={field.field.min < 0}
      onChange={(event) => form.type(field.name, event.target.value)}
      onFocus={(event) => event.target.select()}
    />
  );
}
