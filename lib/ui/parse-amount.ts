import { OutOfRangeError } from "@/lib/calc/errors";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { amountUnit, knownUnits, type ToLibrary } from "./amount-units";
import { displayUnit } from "./display-unit";
import { formatQuantity } from "./format-quantity";

/** The value in the library's unit; or a message that names the field, for beside it. */
export type ParsedAmount =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

/** A number with a decimal comma or point, or a fraction with or without a whole number before it. */
const NUMBER = String.raw`[-+−]?\d+\s+\d+/\d+|[-+−]?\d+/\d+|[-+−]?(?:\d+[.,]?\d*|[.,]\d+)`;
const UNIT = String.raw`[^\d\s.,+−-][^\d.,+−-]*|10⁹`;
const PART = new RegExp(String.raw`\s*(${NUMBER})\s*(${UNIT})?`, "y");

/**
 * Reads what somebody typed: "4.5 kg", "10 lb 2 oz", "68F", "12,5 °P", "1 1/2 gal". A number alone is in the unit in
 * which the person reads the dimension.
 *
 * @param a.label - The field as the screen calls it; every message begins with it.
 * @param a.range - Narrower limits in the library's unit; told in the person's own unit.
 */
export function parseAmount(a: {
  readonly text: string;
  readonly label: string;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
  readonly range?: { readonly min: number; readonly max: number } | undefined;
}): ParsedAmount {
  const { label, dimension, preferences } = a;
  const text = a.text.trim();
  const own = displayUnit(dimension, preferences).unit;
  if (text === "") return refuse(`${label} is empty; write a number in ${own}`);
  const parts = readParts(text);
  if (parts === null) return refuse(`${label} “${text.slice(0, 40)}” is not a number in ${own}`);
  const converted = convert(parts, dimension, own);
  if (typeof converted === "string") {
    const known = knownUnits(dimension).join(", ");
    return refuse(`${label} has the unit “${converted}”; it takes ${known}`);
  }
  try {
    return within(a, sum(converted));
  } catch (error) {
    // The units themselves have ranges: a specific gravity of 1048, a temperature of 900 °F.
    if (error instanceof OutOfRangeError) return refuse(`${label}: ${error.message}`);
    throw error;
  }
}

interface Part {
  readonly number: number;
  readonly unit: string | null;
}

function refuse(message: string): ParsedAmount {
  return { ok: false, message };
}

function readParts(text: string): readonly Part[] | null {
  const parts: Part[] = [];
  for (let at = 0; at < text.length;) {
    PART.lastIndex = at;
    const match = PART.exec(text);
    if (match === null) return null;
    const number = readNumber(match[1] ?? "");
    if (!Number.isFinite(number)) return null;
    parts.push({ number, unit: match[2]?.trim() ?? null });
    at = PART.lastIndex;
  }
  // A second number is the rest of a compound amount, and only its unit says so.
  const isCompound = parts.length > 1;
  return isCompound && parts.some((part) => part.unit === null || part.number < 0) ? null : parts;
}

function readNumber(written: string): number {
  const text = written.replace("−", "-").replace(",", ".");
  if (!text.includes("/")) return Number(text);
  const [over = "", under = ""] = text.split("/");
  const [whole = "0", above = ""] = over.includes(" ") ? over.split(/\s+/) : ["0", over];
  return Number(whole) + Number(above) / Number(under);
}

function convert(parts: readonly Part[], dimension: Dimension, own: string): readonly (() => number)[] | string {
  const thunks: (() => number)[] = [];
  for (const { number, unit } of parts) {
    const toLibrary: ToLibrary | null = amountUnit(dimension, unit ?? own);
    if (toLibrary === null) return unit ?? own;
    thunks.push(() => toLibrary(number));
  }
  return thunks;
}

function sum(parts: readonly (() => number)[]): number {
  return parts.reduce((total, part) => total + part(), 0);
}

function within(a: Parameters<typeof parseAmount>[0], value: number): ParsedAmount {
  const { label, dimension, preferences, range } = a;
  if (range === undefined || (value >= range.min && value <= range.max)) return { ok: true, value };
  const inOwn = (bound: number): string => {
    const { digits: usual } = displayUnit(dimension, preferences);
    // A gram is no kilogram to two digits, and still more than nothing.
    const digits = [usual, usual + 1, usual + 2].find((most) => bound === 0 || Math.abs(bound) * 10 ** most >= 0.5);
    const { text, unit } = formatQuantity({ value: bound, dimension, preferences, digits });
    return `${text} ${unit}`;
  };
  return refuse(`${label} ${inOwn(value)} is outside ${inOwn(range.min)} to ${inOwn(range.max)}`);
}
