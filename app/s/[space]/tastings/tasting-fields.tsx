"use client";

import type { FieldErrors } from "@/lib/model/field-errors";
import { TextField } from "@/lib/ui/text-field";

interface TastingFieldsProps {
  readonly title: string;
  readonly heldOn: string | null;
  readonly note: string;
  readonly errors: FieldErrors;
}

/** What everybody of the club reads of a tasting at any time. */
export function TastingFields({ title, heldOn, note, errors }: TastingFieldsProps) {
  return (
    <>
      <TextField
        name="title"
        label="Title"
        hint="Such as “Spring tasting”. Judges read it, so it names no brewer."
        maxLength={160}
        autoComplete="off"
        defaultValue={title}
        error={errors.title}
      />
      <TextField
        name="heldOn"
        label="Day"
        hint="May stay empty until it is settled."
        type="date"
        defaultValue={heldOn ?? undefined}
        error={errors.heldOn}
      />
      <TextField
        name="note"
        label="Note to everybody"
        hint="Where and when, what to bring, how to get home. Judges read it too; may stay empty."
        maxLength={2000}
        autoComplete="off"
        defaultValue={note}
        error={errors.note}
      />
    </>
  );
}
