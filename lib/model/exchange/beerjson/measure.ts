import { OutOfRangeError } from "@/lib/calc/errors";
import type { Quantity } from "@/lib/calc/units";
import type { MeasuredField } from "../../field";
import type { FieldCursor, Reading } from "../field-cursor";
import type { UnitTable } from "./units";

/** A value with its unit, brought to the unit of a field of this book. */
export function takeMeasure<U extends string>(
  cursor: FieldCursor,
  field: MeasuredField<U>,
  units: UnitTable,
): Quantity<U> | null {
  return cursor.node === null ? null : cursor.takeQuantity(field, readMeasure(cursor, units));
}

/** The same without a range: a figure that is only compared. */
export function statedMeasure(cursor: FieldCursor, units: UnitTable): number | null {
  if (cursor.node === null) return null;
  const reading = readMeasure(cursor, units);
  if (!reading.ok) return cursor.refuse(reading.reason);
  cursor.take("compared with this book's own figure");
  return reading.value;
}

export function readMeasure(cursor: FieldCursor, units: UnitTable): Reading {
  const number = cursor.at("value").node?.value;
  const unit = cursor.at("unit").node?.value;
  if (typeof unit !== "string") return { ok: false, reason: "it has no unit" };
  const convert = Object.hasOwn(units, unit) ? units[unit] : undefined;
  if (convert === undefined) {
    return { ok: false, reason: `“${unit.slice(0, 20)}” is none of its units: ${Object.keys(units).join(", ")}` };
  }
  if (typeof number !== "number") return { ok: false, reason: `its value is ${wordsFor(number)}, not a number` };
  try {
    const value = convert(number);
    return { ok: true, value, converted: value !== number };
  } catch (error) {
    // A conversion has a range of its own; its message names value and range.
    if (error instanceof OutOfRangeError) return { ok: false, reason: error.message };
    throw error;
  }
}

function wordsFor(value: unknown): string {
  if (value === undefined || value === null) return "missing";
  return typeof value === "string" ? `the text “${value.slice(0, 20)}”` : "something else";
}
