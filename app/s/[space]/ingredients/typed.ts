import { z } from "zod";
import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import { readField } from "@/lib/ui/read-field";
import type { FormInput } from "./form-inputs";

const LONGEST_TYPED = 200;

/** The text of a number field, in the unit in which this person types it: "2.3 kg", "5 lb". */
export function typed(field: MeasuredField, preferences: Preferences): z.ZodType<number> {
  return z
    .string({ error: `${field.label} is empty` })
    .max(LONGEST_TYPED, `${field.label} is longer than ${String(LONGEST_TYPED)} characters`)
    .transform((text, context) => {
      const read = readField({ field, text, preferences });
      if (read.ok) return read.value;
      context.addIssue({ code: "custom", message: read.message });
      return z.NEVER;
    });
}

/** What the controls of a form send, as numbers of the library and words. */
export function typedInputs(inputs: readonly FormInput[], preferences: Preferences): Record<string, z.ZodType> {
  return Object.fromEntries(
    inputs.map((input) => {
      const schema: z.ZodType =
        input.type === "number" ? typed(input.field, preferences) : z.string().max(LONGEST_TYPED);
      return [input.name, input.isOptional ? emptyAsNull(schema) : schema];
    }),
  );
}

/** An empty text is nothing; anything else is read. */
export function emptyAsNull<T>(schema: z.ZodType<T>): z.ZodType<T | null> {
  return z.unknown().transform((value, context) => {
    if (value === undefined || (typeof value === "string" && value.trim() === "")) return null;
    const parsed = schema.safeParse(value);
    if (parsed.success) return parsed.data;
    for (const { message } of parsed.error.issues) context.addIssue({ code: "custom", message });
    return z.NEVER;
  });
}

/**
 * A flat form that becomes a record: each message is put beside the control whose name is the last part of the path that
 * the record's own schema complains of.
 */
export function flatForm<S extends z.ZodType>(
  shape: Record<string, z.ZodType>,
  assemble: (values: Readonly<Record<string, unknown>>) => unknown,
  into: S,
): z.ZodType<z.output<S>> {
  return z.strictObject(shape).transform((values, context) => {
    const parsed = into.safeParse(assemble(values));
    if (parsed.success) return parsed.data;
    for (const { path, message } of parsed.error.issues) {
      const control = path.findLast((part) => typeof part === "string");
      context.addIssue({ code: "custom", path: control === undefined ? [] : [control], message });
    }
    return z.NEVER;
  });
}
