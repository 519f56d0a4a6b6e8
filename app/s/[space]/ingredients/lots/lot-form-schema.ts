import { z } from "zod";
import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import { lotChange, lotMove, newLot } from "@/lib/model/ingredient-lot";
import { toThousandth } from "@/lib/model/lot-need";
import type { Preferences } from "@/lib/model/preferences";
import { currencyCode, minorUnits } from "@/lib/model/price";
import { LOT_INPUTS } from "../form-inputs";
import { emptyAsNull, flatForm, typed, typedInputs } from "../typed";

type Values = Readonly<Record<string, unknown>>;

/** The form of a new lot of a kind. */
export function newLotForm(kind: IngredientKind, preferences: Preferences) {
  const shape = { ...shapeOf(kind, preferences), owner: z.string(), onHand: amount(kind, preferences) };
  const assemble = ({ owner, onHand, ...values }: Values) => ({ owner, onHand, ...described(kind, values) });
  return priced(flatForm(shape, assemble, newLot));
}

/** The form that changes what a lot is. */
export function lotChangeForm(kind: IngredientKind, preferences: Preferences) {
  const shape = { ...shapeOf(kind, preferences), id: z.string(), lockVersion: z.string() };
  const assemble = ({ id, lockVersion, ...values }: Values) => ({ id, lockVersion, ...described(kind, values) });
  return priced(flatForm(shape, assemble, lotChange));
}

/** The form that notes what came or went. */
export function lotMoveForm(kind: IngredientKind, preferences: Preferences) {
  const shape = {
    ...{ id: z.string(), lockVersion: z.string(), kind: z.string(), why: z.string() },
    amount: amount(kind, preferences, "Amount"),
  };
  return flatForm(shape, (values) => values, lotMove);
}

function amount(kind: IngredientKind, preferences: Preferences, label?: string): z.ZodType<number> {
  const field = ON_HAND_FIELDS[kind];
  return typed(label === undefined ? field : { ...field, label }, preferences).transform(toThousandth);
}

function shapeOf(kind: IngredientKind, preferences: Preferences): Record<string, z.ZodType> {
  const priceFor = { ...ON_HAND_FIELDS[kind], label: "Price for", min: 0.001 };
  return {
    ...{ name: z.string(), label: z.string(), notes: z.string(), bestBefore: emptyAsNull(z.string()) },
    price: emptyAsNull(z.string().max(20, "Price is longer than 20 characters")),
    currency: emptyAsNull(currencyCode),
    priceFor: emptyAsNull(typed(priceFor, preferences)),
    ...typedInputs(LOT_INPUTS[kind], preferences),
  };
}

function described(kind: IngredientKind, values: Values) {
  const { name, label, notes, bestBefore, price, currency, priceFor, ...figures } = values;
  return { name, label, notes, bestBefore, what: { kind, figures }, price: priceOf(price, currency, priceFor) };
}

/** Without an amount there is no price; with one, the currency and what it was for are asked for. */
function priceOf(price: unknown, currency: unknown, priceFor: unknown): unknown {
  if (typeof price !== "string") return null;
  const minor = typeof currency === "string" ? minorUnits(price, currency) : price;
  return { minor: minor ?? price, currency, for: priceFor };
}

const PRICE_MESSAGES: Readonly<Record<string, { readonly control: string; readonly message: string }>> = {
  minor: { control: "price", message: "Price is not an amount of this currency; it takes a number such as 4.50" },
  for: { control: "priceFor", message: "Price for is empty; write for how much the price is, such as 1 kg" },
};

/** The parts of a price have controls with other names. */
function priced<T>(schema: z.ZodType<T>): z.ZodType<T> {
  return z.unknown().transform((value, context) => {
    const parsed = schema.safeParse(value);
    if (parsed.success) return parsed.data;
    for (const { path, message } of parsed.error.issues) {
      const renamed = PRICE_MESSAGES[String(path.at(-1))];
      const at = renamed === undefined ? [...path] : [renamed.control];
      context.addIssue({ code: "custom", path: at, message: renamed?.message ?? message });
    }
    return z.NEVER;
  });
}
