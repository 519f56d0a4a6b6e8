import { z } from "zod";
import type { Quantity, QuantityMaker } from "@/lib/calc/units";
import type { MeasuredField } from "./field";

interface Bounds {
  readonly min: number;
  readonly max: number;
}

/** The comma of many languages is as good as a point; a number has one of them at most, and none by thousands. */
const DECIMAL = /^[+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d{1,3})?$/i;

/**
 * A number field of a form or of JSON as a quantity. `label` is the field's name on the screen: every refusal says the
 * field, the value and the range. A field with a narrower range than its unit passes its own.
 */
export function measured<U extends string>(
  label: string,
  make: QuantityMaker<U>,
  bounds: Bounds = make.range,
): z.ZodType<Quantity<U>> {
  const limits = { ...bounds, unit: make.range.unit };
  return z.unknown().transform((value, context) => {
    const number = readNumber(label, value, limits);
    if (typeof number === "number") return make(number);
    context.addIssue({ code: "custom", message: number.refusal });
    return z.NEVER;
  });
}

/** The same for a field of a form. */
export function measuredBy<U extends string>({ label, make, min, max }: MeasuredField<U>): z.ZodType<Quantity<U>> {
  return measured(label, make, { min, max });
}

/** A number field that is no quantity of the library: an uncertainty, a count. */
export function ranged(label: string, limits: Bounds & { readonly unit: string }): z.ZodType<number> {
  return z.unknown().transform((value, context) => {
    const number = readNumber(label, value, limits);
    if (typeof number === "number") return number;
    context.addIssue({ code: "custom", message: number.refusal });
    return z.NEVER;
  });
}

/** A whole number in a range. */
export function counted(label: string, bounds: Bounds): z.ZodType<number> {
  return ranged(label, { ...bounds, unit: "" }).refine(Number.isInteger, { message: `${label} is not a whole number` });
}

/** The number of a revision, counted from 1. */
export const revisionNumber = counted("Revision", { min: 1, max: 1_000_000 });

/** The number, or the sentence that says why there is none. */
function readNumber(
  label: string,
  value: unknown,
  { min, max, unit }: Bounds & { readonly unit: string },
): number | { readonly refusal: string } {
  const ofUnit = unit === "" ? "" : ` ${unit}`;
  const range = `${String(min)} to ${String(max)}${ofUnit}`;
  if (value === undefined || value === null || (typeof value === "string" && value.trim() === "")) {
    return { refusal: `${label} is empty; it takes a number from ${range}` };
  }
  const number = toNumber(value);
  if (number === null) return { refusal: `${label} ${shown(value)} is not a number; it takes ${range}` };
  if (number < min || number > max) return { refusal: `${label} ${String(number)}${ofUnit} is outside ${range}` };
  return number;
}

// Number() alone reads "" as 0, "0x10" as 16 and [5] as 5.
function toNumber(value: unknown): number | null {
  if (typeof value === "number") return Number.isNaN(value) ? null : value;
  if (typeof value !== "string" || !DECIMAL.test(value.trim())) return null;
  return Number(value.trim().replace(",", "."));
}

function shown(value: unknown): string {
  return typeof value === "string" ? `“${value.trim().slice(0, 40)}”` : `of type ${typeof value}`;
}
