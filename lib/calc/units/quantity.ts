import { requireInRange } from "../errors";

declare const unitOf: unique symbol;

/** A finite number in unit `U`, checked when it was made. At run time it is only a number. */
export type Quantity<U extends string> = number & { readonly [unitOf]: U };

/** Makes quantities of one unit and knows their possible range. */
export interface QuantityMaker<U extends string> {
  (value: number): Quantity<U>;
  readonly quantity: string;
  readonly range: { readonly unit: U; readonly min: number; readonly max: number };
}

/**
 * Defines a unit: a function that checks a number against the unit's possible range and brands it.
 *
 * @param quantity - What is measured, as it appears in the message of a refusal.
 * @returns A maker whose `range` also serves the schema and the form field.
 * @example
 * const celsius = defineQuantity("temperature", { unit: "°C", min: -30, max: 130 });
 * celsius(20); // 20
 */
export function defineQuantity<U extends string>(quantity: string, range: QuantityMaker<U>["range"]): QuantityMaker<U> {
  const make = (value: number): Quantity<U> => requireInRange(quantity, value, range) as Quantity<U>;
  return Object.assign(make, { quantity, range });
}
