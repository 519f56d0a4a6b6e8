import { z } from "zod";

// Control characters have no place in a name; tab and newline have one in a text of several lines.
// eslint-disable-next-line no-control-regex -- the control characters are what is refused
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

/** A line of text that a person must fill in. */
export function written(label: string, longest: number): z.ZodType<string> {
  return z
    .string({ error: `${label} is empty` })
    .trim()
    .min(1, `${label} is empty`)
    .max(longest, `${label} is longer than ${String(longest)} characters`)
    .refine((text) => !CONTROL.test(text), { message: `${label} has characters that cannot be printed` });
}

/** A text that may be empty. */
export function optionalText(label: string, longest: number): z.ZodType<string> {
  return z
    .string({ error: `${label} is not a text` })
    .trim()
    .max(longest, `${label} is longer than ${String(longest)} characters`)
    .refine((text) => !CONTROL.test(text), { message: `${label} has characters that cannot be printed` });
}

/** One of a few words. */
export function oneOf<const W extends string>(label: string, words: readonly W[]): z.ZodType<W> {
  return z.enum(words, { error: `${label} is one of: ${words.join(", ")}` });
}

/** The identifier of a record, made by the program: a wrong one is a stale link or a forged request. */
export const recordId = z.guid({ error: "This is not the identifier of a record" });
