import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import { fieldText, fieldUnit, readField } from "./read-field";

/** A number alone is in the reader's own unit already. */
const PLAIN = /^[-+−]?(?:\d+[.,]?\d*|[.,]\d+)$/;

/** What an amount in another unit, or in two, comes to in the reader's own: "= 4.59 kg"; null where nothing was converted. */
export function amountEcho(a: {
  readonly text: string;
  readonly field: MeasuredField;
  readonly preferences: Preferences;
}): string | null {
  const { field, preferences } = a;
  const text = a.text.trim();
  if (text === "" || PLAIN.test(text)) return null;
  const unit = fieldUnit(field, preferences);
  const [, number = "", own] = /^(\S+?)\s*(\D+)$/.exec(text) ?? [];
  if (own?.trim() === unit && PLAIN.test(number)) return null;
  const read = readField({ field, text, preferences });
  return read.ok ? `= ${fieldText(field, read.value, preferences)} ${unit}` : null;
}
