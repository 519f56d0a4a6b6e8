/** What an order can hold; the first five are kept as lots too. */
export const ORDER_KINDS = ["fermentable", "hop", "yeast", "salt", "acid", "other"] as const;
export type OrderKind = (typeof ORDER_KINDS)[number];

/** Whole grams, millilitres or pieces: what can be counted can be shared out exactly. */
export const ORDER_UNITS = ["g", "mL", "pcs"] as const;
export type OrderUnit = (typeof ORDER_UNITS)[number];

/** Where an order is, in the order in which it gets there. */
export const ORDER_STATES = ["open", "locked", "placed", "received", "handed out", "cancelled"] as const;
export type OrderState = (typeof ORDER_STATES)[number];

/** The steps that an order can take; the database takes no others. */
export const ORDER_MOVES: Readonly<Record<OrderState, readonly OrderState[]>> = {
  open: ["locked", "cancelled"],
  locked: ["placed", "open", "cancelled"],
  placed: ["received", "cancelled"],
  received: ["handed out"],
  "handed out": [],
  cancelled: [],
};

export const SUBSTITUTION_STATES = ["proposed", "agreed", "declined"] as const;

/** Where a wish in a locked order is: only the first two are still to be decided. */
export const LATE_WISH_STATES = ["let", "wished", "taken in", "declined", "withdrawn", "lapsed"] as const;
export type LateWishState = (typeof LATE_WISH_STATES)[number];

/** Which thing it is: two sheets that name the same one need it together. */
export interface OrderThing {
  readonly kind: OrderKind;
  readonly name: string;
  readonly unit: OrderUnit;
}

/** The name as it is compared. */
export function nameKey(name: string): string {
  return name.trim().toLowerCase();
}

export function thingKey({ kind, name, unit }: OrderThing): string {
  return `${kind}/${unit}/${nameKey(name)}`;
}
