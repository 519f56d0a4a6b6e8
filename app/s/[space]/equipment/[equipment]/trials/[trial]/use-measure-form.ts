"use client";

import { useState } from "react";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { fieldText, readField } from "@/lib/ui/read-field";
import type { FormField, FormValues } from "./form-shape";

export interface MeasureForm {
  readonly texts: Readonly<Record<string, string>>;
  readonly errors: FieldErrors;
  readonly refusals: number;
  readonly type: (name: string, text: string) => void;
  /** The values, or null where a field cannot be read. */
  readonly read: () => FormValues | null;
  /** Empties what is measured anew each time; how sure it is stays. */
  readonly clear: () => void;
}

/** The texts of a form of numbers and choices, and what they mean. */
export function useMeasureForm(a: {
  readonly fields: readonly FormField[];
  readonly values: FormValues;
  readonly preferences: Preferences;
}): MeasureForm {
  const { fields, values, preferences } = a;
  const [texts, setTexts] = useState(() => textsOf(fields, values, preferences));
  const [errors, setErrors] = useState<FieldErrors>({});
  const [refusals, setRefusals] = useState(0);

  function read(): FormValues | null {
    const found: Record<string, number | string> = {};
    const wrong: Record<string, string> = {};
    for (const field of fields) {
      const text = texts[field.name] ?? "";
      if (field.kind === "choice") {
        found[field.name] = text;
        continue;
      }
      const value = readField({ field: field.field, text, preferences });
      if (value.ok) found[field.name] = value.value;
      else wrong[field.name] = value.message;
    }
    setErrors(wrong);
    if (Object.keys(wrong).length === 0) return found;
    setRefusals((before) => before + 1);
    return null;
  }

  function clear(): void {
    const empty = fields.filter((field) => field.kind === "number" && field.start === null).map(({ name }) => name);
    setTexts((before) => ({ ...before, ...Object.fromEntries(empty.map((name) => [name, ""])) }));
  }

  const type = (name: string, text: string): void => setTexts((before) => ({ ...before, [name]: text }));
  return { texts, errors, refusals, type, read, clear };
}

function textsOf(
  fields: readonly FormField[],
  values: FormValues,
  preferences: Preferences,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    fields.map((field) => {
      const value = values[field.name] ?? field.start;
      if (field.kind === "choice") return [field.name, String(value)];
      return [field.name, typeof value === "number" ? fieldText(field.field, value, preferences) : ""];
    }),
  );
}
