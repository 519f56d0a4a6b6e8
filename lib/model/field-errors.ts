import type { z } from "zod";

/** Messages by the dotted path of their field; what belongs to no field stands under "". */
export type FieldErrors = Readonly<Record<string, string>>;

/** The first message for each field. */
export function fieldErrors(error: z.ZodError): FieldErrors {
  // A path comes from the request, and "__proto__" is not a field.
  const messages = new Map<string, string>();
  for (const issue of error.issues) {
    const path = issue.path.map(String).join(".");
    if (!messages.has(path)) messages.set(path, issue.message);
  }
  return Object.fromEntries(messages);
}

/** Everything that is wrong, as one text for who sends no form. */
export function refusalWords(error: z.ZodError): string {
  return [...new Set(Object.values(fieldErrors(error)))].join(". ");
}
