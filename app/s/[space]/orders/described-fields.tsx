import type { FieldErrors } from "@/lib/model/field-errors";
import { TextField } from "@/lib/ui/text-field";

interface DescribedFieldsProps {
  readonly values?: { readonly closesAt: string; readonly note: string };
  readonly errors: FieldErrors;
}

/** Until when an order is open, and what members should know of it. */
export function DescribedFields({ values, errors }: DescribedFieldsProps) {
  return (
    <>
      <TextField
        name="closesAt"
        label="Closing day"
        hint="When you mean to lock it; may stay empty."
        type="date"
        defaultValue={values?.closesAt ?? ""}
        error={errors.closesAt}
      />
      <TextField
        name="note"
        label="Note"
        hint="Where to order, who collects it; may stay empty."
        maxLength={2000}
        autoComplete="off"
        defaultValue={values?.note ?? ""}
        error={errors.note}
      />
    </>
  );
}
