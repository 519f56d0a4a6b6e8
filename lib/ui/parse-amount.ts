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
 * Reads what somebody typed: "4.5 kg", "10 lb 2 oz", "68F", "12,5 °P", "1 1/2 gal", "½ oz". A number alone is in the
 * unit in which the person reads the dimension. It is an amount and no sum: of two units the larger comes first, and
 * nothing is added up that cannot be, such as two temperatures.
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
  const parts = readParts(spelledOut(text));
  if (parts === null) return refuse(`${label} “${text.slice(0, 40)}” is not a number in ${own}`);
  if (parts.length > 1 && !COMPOUND.has(dimension)) return refuse(`${label} “${text.slice(0, 40)}” is not one number`);
  const converted = convert(parts, dimension, own);
  if (typeof converted === "string") {
    const known = knownUnits(dimension).join(", ");
    return refuse(`${label} has the unit “${converted}”; it takes ${known}`);
  }
  if (!isDescending(parts, dimension)) {
    return refuse(`${label} “${text.slice(0, 40)}” is not one amount; the larger unit comes first`);
  }
  try {
    return within(a, sum(converted));
  } catch (error) {
    // The units themselves have ranges: a specific gravity of 1048, a temperature of 900 °F.
    if (error instanceof OutOfRangeError) return refuse(`${label}: ${error.message}`);
    throw error;
  }
}

/** What is measured in two units at once: pounds and ounces, gallons and quarts, hours and minutes. */
const COMPOUND: ReadonlySet<Dimension> = new Set<Dimension>(["volume", "mass", "grams", "minutes"]);

const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** "1½" as "1 1/2", and the slash of fractions as the one on the keyboard. */
function spelledOut(text: string): string {
  const written = text.replaceAll(/[½⅓⅔¼¾⅕⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign] ?? sign}`);
  return written.replaceAll("⁄", "/").trim();
}

/** 2 oz after 10 lb, never 10 lb after 2 oz, and never 1 kg after 2 kg. */
function isDescending(parts: readonly Part[], dimension: Dimension): boolean {
  if (parts.length < 2) return true;
  const sizes = parts.map(({ unit }) => amountUnit(dimension, unit ?? "")?.(1) ?? 0);
  return sizes.every((size, i) => i === 0 || size < (sizes[i - 1] ?? 0));
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
