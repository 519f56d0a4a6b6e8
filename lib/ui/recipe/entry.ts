import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import type { ParsedAmount } from "../parse-amount";
import { fieldText, readField } from "../read-field";

/** One field of a draft as it stands on the screen. */
export interface Entry {
  readonly text: string;
  /** The stored value that the text stands for, until somebody types: a rounded text does not change a recipe. */
  readonly exact: number | null;
  /** Whether a person wrote the text, now or in an earlier revision. */
  readonly isTyped: boolean;
  /** The target that the value was solved for, in words; typing over it takes it away. */
  readonly solvedFor?: string | undefined;
}

export const EMPTY: Entry = { text: "", exact: null, isTyped: false };

export function typed(text: string): Entry {
  return { text, exact: null, isTyped: true };
}

/** A word or a choice, which is its own value. */
export function word(text: string): Entry {
  return { text, exact: null, isTyped: false };
}

/**
 * A stored value as an entry. What somebody once typed is shown again if it still means the same to this reader: "10"
 * typed as kilograms is not 10 lb.
 */
export function stored(a: {
  readonly field: MeasuredField;
  readonly value: number;
  readonly entered?: string | undefined;
  readonly preferences: Preferences;
}): Entry {
  const { field, value, entered, preferences } = a;
  if (entered !== undefined) {
    const read = readField({ field, text: entered, preferences });
    if (read.ok && Math.abs(read.value - value) <= 1e-9 * Math.abs(value)) {
      return { text: entered, exact: value, isTyped: true };
    }
  }
  return { text: fieldText(field, value, preferences), exact: value, isTyped: false };
}

/** The value of an entry in the library's unit, or the message that says why there is none. */
export function readEntry(
  entry: Entry,
  a: { readonly field: MeasuredField; readonly label?: string | undefined; readonly preferences: Preferences },
): ParsedAmount {
  return entry.exact === null ? readField({ ...a, text: entry.text }) : { ok: true, value: entry.exact };
}
