import type { z } from "zod";
import { currencyCode, minorUnits } from "../price";
import type { OrderKind, OrderThing, OrderUnit } from "./order-words";

/** In what an amount of an order is typed; who reads US units types pounds for kilograms and ounces for grams. */
export const ENTRY_MEASURES = ["kg", "g", "mL", "pcs"] as const;
export type EntryMeasure = (typeof ENTRY_MEASURES)[number];

/** Malt and sugar are bought by the kilogram, and counted in grams. */
export function entryMeasure({ kind, unit }: Pick<OrderThing, "kind" | "unit">): EntryMeasure {
  return kind === "fermentable" && unit === "g" ? "kg" : unit;
}

/** The unit in which an order counts what is typed so. */
export function countedUnit(measure: EntryMeasure): OrderUnit {
  return measure === "kg" ? "g" : measure;
}

/** What a member may ask for that no sheet names: kinds with the measures in which they are typed. */
export const THINGS_TO_ASK_FOR: readonly { readonly kind: OrderKind; readonly measure: EntryMeasure }[] = [
  { kind: "fermentable", measure: "kg" },
  { kind: "hop", measure: "g" },
  { kind: "yeast", measure: "pcs" },
  { kind: "salt", measure: "g" },
  { kind: "acid", measure: "mL" },
  { kind: "other", measure: "pcs" },
  { kind: "other", measure: "g" },
  { kind: "other", measure: "mL" },
];

/** A price of a form in the smallest unit of its currency. */
export function readPrice(
  a: { readonly label: string; readonly field: string; readonly text: string; readonly currency: string },
  context: z.RefinementCtx,
): number {
  const currency = currencyCode.safeParse(a.currency);
  const minor = currency.success ? minorUnits(a.text, currency.data) : null;
  if (minor !== null) return minor;
  const said = a.text.trim() === "" ? "is empty" : `“${a.text.trim().slice(0, 40)}” is no price`;
  context.addIssue({
    code: "custom",
    path: [a.field],
    message: `${a.label} ${said}; it takes an amount such as 24.50`,
  });
  return 0;
}
