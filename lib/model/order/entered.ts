import { z } from "zod";
import { currencyCode, minorUnits } from "../price";
import type { OrderThing } from "./order-words";

const DECIMAL = /^\d{1,9}(?:[.,]\d{1,6})?$/;

/** The unit in which an amount is typed and read, and how many units of an order it is. */
export interface EntryUnit {
  readonly unit: string;
  readonly factor: 1 | 1000;
}

/** Malt and sugar are bought in kilograms, and counted in grams. */
export function entryUnit({ kind, unit }: Pick<OrderThing, "kind" | "unit">): EntryUnit {
  return kind === "fermentable" && unit === "g" ? { unit: "kg", factor: 1000 } : { unit, factor: 1 };
}

/** An amount of a form in the whole units of an order: "12,4" with a factor of 1000 is 12 400. */
export function enteredAmount(
  label: string,
  text: string,
  factor: number,
): { readonly amount: number } | { readonly refusal: string } {
  const typed = text.trim();
  if (typed === "") return { refusal: `${label} is empty` };
  if (!DECIMAL.test(typed)) return { refusal: `${label} “${typed.slice(0, 40)}” is not an amount, such as 12 or 4.5` };
  const amount = Math.round(Number(typed.replace(",", ".")) * factor * 1e6) / 1e6;
  if (Number.isInteger(amount)) return { amount };
  const finest = factor === 1 ? "whole numbers" : "three decimals at most";
  return { refusal: `${label} “${typed}” is finer than can be weighed out; it takes ${finest}` };
}

/** The field of a form that holds such an amount, with the field beside it that says the factor. */
export const typedAmount = {
  amount: z.string().max(40),
  factor: z.enum(["1", "1000"]),
} as const;

/** A form's amount as the service takes it; what cannot be read is told at its field. */
export function readAmount(
  label: string,
  form: { readonly amount: string; readonly factor: string },
  context: z.RefinementCtx,
): number {
  const read = enteredAmount(label, form.amount, Number(form.factor));
  if ("amount" in read) return read.amount;
  context.addIssue({ code: "custom", path: ["amount"], message: read.refusal });
  return 0;
}

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
