import { z } from "zod";

/** Money as it is kept: whole smallest units of a currency, for so much of what was bought. */
export interface Price {
  readonly minor: number;
  readonly currency: string;
  /** In the unit in which the lot is kept. */
  readonly for: number;
}

const MOST_MINOR = 100_000_000_000;

export const currencyCode = z
  .string({ error: "Currency is empty" })
  .trim()
  .toUpperCase()
  .regex(/^[A-Z]{3}$/, "Currency takes the three letters of ISO 4217, such as EUR");

/** How many decimals a currency has: two for most, none for JPY, three for KWD. */
function decimalsOf(currency: string): number {
  const { maximumFractionDigits } = new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions();
  return maximumFractionDigits ?? 2;
}

/** "4.50" or "4,5" of a currency in its smallest unit; null for what is no such amount. */
export function minorUnits(text: string, currency: string): number | null {
  const decimals = decimalsOf(currency);
  const match = /^(\d{1,9})(?:[.,](\d+))?$/.exec(text.trim());
  const [, whole = "", part = ""] = match ?? [];
  if (match === null || part.length > decimals) return null;
  const minor = Number(whole + part.padEnd(decimals, "0"));
  return minor <= MOST_MINOR ? minor : null;
}

/** The amount alone, as it is typed: "4.50". */
export function majorText(minor: number, currency: string): string {
  const decimals = decimalsOf(currency);
  if (decimals === 0) return String(minor);
  const digits = String(minor).padStart(decimals + 1, "0");
  return `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}

export const price = z
  .strictObject({
    minor: z.int().min(0).max(MOST_MINOR),
    currency: currencyCode,
    for: z.number().positive().max(1_000_000),
  })
  .nullable();
