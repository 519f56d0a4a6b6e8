import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "./display-unit";
import { parseAmount, type ParsedAmount } from "./parse-amount";

const PLAIN = /^([-+−]?(?:\d+[.,]?\d*|[.,]\d+))\s*(\D.*)?$/;

/** A number that was not typed is written with this many digits more than it is read with. */
const EXTRA_DIGITS = 1;
const SIGNIFICANT_DIGITS = 4;

/** The unit in which one person types a field. */
export function fieldUnit({ dimension, make }: MeasuredField, preferences: Preferences): string {
  return dimension === null ? make.range.unit : displayUnit(dimension, preferences).unit;
}

/**
 * Reads the text of a field; what cannot be read or lies outside the field's range is told with field, value and range.
 *
 * @param a.label - The field as the screen calls it, where that is more than its own name.
 */
export function readField(a: {
  readonly field: MeasuredField;
  readonly text: string;
  readonly label?: string | undefined;
  readonly preferences: Preferences;
}): ParsedAmount {
  const { field, text, preferences } = a;
  const { dimension, min, max } = field;
  const label = a.label ?? field.label;
  if (dimension !== null) return parseAmount({ text, label, dimension, preferences, range: { min, max } });
  return readPlain(field, text.trim(), label);
}

function readPlain({ make, min, max }: MeasuredField, text: string, label: string): ParsedAmount {
  const { unit } = make.range;
  const range = `${min} to ${max} ${unit}`;
  if (text === "") return { ok: false, message: `${label} is empty; it takes a number from ${range}` };
  const [, number, written] = PLAIN.exec(text) ?? [];
  if (number === undefined) return { ok: false, message: `${label} “${text.slice(0, 40)}” is not a number in ${unit}` };
  if (written !== undefined && written.trim() !== unit) {
    return { ok: false, message: `${label} has the unit “${written.trim().slice(0, 20)}”; it takes ${unit}` };
  }
  const value = Number(number.replace("−", "-").replace(",", "."));
  if (value >= min && value <= max) return { ok: true, value };
  return { ok: false, message: `${label} ${value} ${unit} is outside ${range}` };
}

/** A stored value as the text of its field, in the unit in which the person types it. */
export function fieldText({ dimension }: MeasuredField, value: number, preferences: Preferences): string {
  if (dimension === null)
    return String(Number.isInteger(value) ? value : Number(value.toPrecision(SIGNIFICANT_DIGITS)));
  const { fromLibrary, digits } = displayUnit(dimension, preferences);
  const rounded = Number(fromLibrary(value).toFixed(digits + EXTRA_DIGITS));
  return String(Number(rounded.toPrecision(SIGNIFICANT_DIGITS)));
}
