import { OutOfRangeError } from "@/lib/calc/errors";
import type { Quantity } from "@/lib/calc/units";
import type { MeasuredField } from "../../field";
import type { FieldCursor, Reading } from "../field-cursor";

const DECIMAL = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;

/** A number in the standard's own unit, brought to a field of this book by `convert`. */
export function takeNumber<U extends string>(
  cursor: FieldCursor,
  field: MeasuredField<U>,
  convert: ((value: number) => number) | null = null,
): Quantity<U> | null {
  const { node, text } = cursor;
  if (node === null || text === "") return null;
  return cursor.takeQuantity(field, readNumber(text, convert));
}

/** A figure that is only compared. */
export function statedNumber(cursor: FieldCursor, convert: ((value: number) => number) | null = null): number | null {
  const { node, text } = cursor;
  if (node === null || text === "") return null;
  const reading = readNumber(text, convert);
  if (!reading.ok) return cursor.refuse(reading.reason);
  cursor.take("compared with this book's own figure");
  return reading.value;
}

function readNumber(text: string | null, convert: ((value: number) => number) | null): Reading {
  if (text === null || !DECIMAL.test(text)) {
    return { ok: false, reason: `“${(text ?? "").slice(0, 20)}” is not a number, which has a point and no unit here` };
  }
  const number = Number(text);
  if (!Number.isFinite(number)) return { ok: false, reason: `${text.slice(0, 20)} is too large a number` };
  try {
    return { ok: true, value: convert === null ? number : convert(number), converted: convert !== null };
  } catch (error) {
    // A conversion has a range of its own; its message names value and range.
    if (error instanceof OutOfRangeError) return { ok: false, reason: error.message };
    throw error;
  }
}

/** TRUE or FALSE, which files in the wild write in letters of any case; null for anything else. */
export function readBoolean(cursor: FieldCursor): boolean | null {
  const text = cursor.text?.toUpperCase();
  return text === "TRUE" ? true : text === "FALSE" ? false : null;
}

export const ofPercent = (value: number): number => value / 100;
export const gramsOfKilograms = (value: number): number => value * 1000;
