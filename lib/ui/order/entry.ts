import type { Dimension } from "@/lib/calc/ledger";
import { ORDER_RANGE } from "@/lib/calc/order";
import type { EntryMeasure } from "@/lib/model/order/entered";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { parseAmount } from "../parse-amount";

/** The measures that have another unit in the US, and how many grams the library's unit of each has. */
const MASSES: Readonly<Partial<Record<EntryMeasure, { readonly dimension: Dimension; readonly grams: number }>>> = {
  kg: { dimension: "mass", grams: 1000 },
  g: { dimension: "grams", grams: 1 },
};

/** Digits that tell one gram from the next: 0.001 lb are half a gram, 0.01 oz are a third of one. */
const US_DIGITS: Readonly<Partial<Record<EntryMeasure, number>>> = { kg: 3, g: 2 };

const WHOLE = /^\d{1,9}(?:[.,]\d{1,6})?$/;
const US_UNIT = /oz|ounce|lb|pound/i;

export type EntryRead = { readonly amount: number } | { readonly refusal: string };

/** The unit that a number alone is read in. */
export function entryUnit(measure: EntryMeasure, preferences: Preferences): string {
  const mass = MASSES[measure];
  return mass === undefined ? measure : displayUnit(mass.dimension, preferences).unit;
}

/** An amount as it is typed: 12 400 g of malt are "12.4", or "27.337" for who reads pounds; it is read back as the same. */
export function entryText(measure: EntryMeasure, amount: number, preferences: Preferences): string {
  const mass = MASSES[measure];
  if (mass === undefined) return String(amount);
  const shown = displayUnit(mass.dimension, preferences).fromLibrary(amount / mass.grams);
  return preferences.units === "us" ? String(Number(shown.toFixed(US_DIGITS[measure] ?? 0))) : String(shown);
}

/** Reads a typed amount, such as "12,4", "10 lb 2 oz" or "300 g", in the whole units of an order. */
export function readEntry(
  a: { readonly label: string; readonly measure: EntryMeasure; readonly text: string; readonly most?: number },
  preferences: Preferences,
): EntryRead {
  const { label, measure, most = ORDER_RANGE.amount.max } = a;
  const text = a.text.trim();
  if (text === "") return { refusal: `${label} is empty; write an amount in ${entryUnit(measure, preferences)}` };
  const mass = MASSES[measure];
  if (mass === undefined) return readPieces({ label, measure, text, most });
  const { dimension, grams } = mass;
  const read = parseAmount({ text, label, dimension, preferences, range: { min: 0, max: most / grams } });
  if (!read.ok) return { refusal: read.message };
  const exact = read.value * grams;
  // An ounce is no whole number of grams, so what is typed in ounces is rounded to the nearest; grams are taken as they are.
  const isUs = US_UNIT.test(text) || (preferences.units === "us" && !/[a-z]/i.test(text));
  const amount = Math.round(exact);
  if (Math.abs(exact - amount) > 1e-6 && !isUs) return tooFine(label, text, "whole grams");
  return amount === 0 && exact > 0 ? tooFine(label, text, "one gram at least") : { amount };
}

function readPieces(a: {
  readonly label: string;
  readonly measure: EntryMeasure;
  readonly text: string;
  readonly most: number;
}): EntryRead {
  const { label, measure, text, most } = a;
  const number = text.toLowerCase().endsWith(measure.toLowerCase()) ? text.slice(0, -measure.length).trim() : text;
  if (!WHOLE.test(number)) return { refusal: `${label} “${text.slice(0, 40)}” is not a number in ${measure}` };
  const amount = Number(number.replace(",", "."));
  if (!Number.isInteger(amount)) return tooFine(label, text, "whole numbers");
  if (amount <= most) return { amount };
  return { refusal: `${label} ${String(amount)} ${measure} is outside 0 to ${String(most)} ${measure}` };
}

function tooFine(label: string, text: string, takes: string): EntryRead {
  return { refusal: `${label} “${text.slice(0, 40)}” is finer than can be weighed out; it takes ${takes}` };
}
