import { Field } from "@/lib/ui/field";
import { controlAttributes } from "@/lib/ui/field-ids";

/** Notes of several lines. */
export function NotesField({ value, error }: { readonly value: unknown; readonly error: string | undefined }) {
  return (
    <Field name="notes" label="Notes" error={error}>
      <textarea
        rows={3}
        maxLength={4000}
        defaultValue={typeof value === "string" ? value : ""}
        className="input"
        {...controlAttributes({ name: "notes", error })}
      />
    </Field>
  );
}
