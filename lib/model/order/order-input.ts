import { z } from "zod";
import { ORDER_RANGE } from "@/lib/calc/order";
import { counted, ranged } from "../measured";
import { currencyCode } from "../price";
import { oneOf, optionalText, recordId, written } from "../written";
import { ORDER_KINDS, ORDER_STATES, ORDER_UNITS, type OrderKind, type OrderUnit } from "./order-words";

const lockVersion = counted("Version", { min: 0, max: 1_000_000_000 });
const amountLimits = { min: 0, max: ORDER_RANGE.amount.max };
/** What comes from a supplier may be more than anybody may ask for. */
export const RECEIVED_LIMITS = { min: 0, max: 100_000_000 };

/** What may still be said otherwise while an order is open. */
const described = {
  title: written("Title", 160),
  closesAt: z.coerce.date({ error: "Closing day is not a date" }).nullable(),
  note: optionalText("Note", 2000),
} as const;

export const newOrder = z.strictObject({ ...described, sharedBrewId: recordId.nullable(), currency: currencyCode });
export type NewOrder = z.output<typeof newOrder>;

export const orderChange = z.strictObject({ ...described, orderId: recordId, lockVersion });
export type OrderChange = z.output<typeof orderChange>;

export const orderMove = z.strictObject({
  orderId: recordId,
  lockVersion,
  state: oneOf("State", ORDER_STATES),
  /** What the page showed; only locking looks at it. */
  fingerprint: z.string().max(100),
});
export type OrderMove = z.output<typeof orderMove>;

const item = { orderId: recordId, itemId: recordId };

/** What a member wants beside their sheets; 0 takes it back. */
export const orderWant = z.strictObject({ ...item, lockVersion, amount: counted("Amount", amountLimits) });
export type OrderWant = z.output<typeof orderWant>;

/** Something that no sheet names. */
export const newThing = z
  .strictObject({
    orderId: recordId,
    kind: oneOf("Kind", ORDER_KINDS),
    name: written("Name", 80),
    unit: oneOf("Unit", ORDER_UNITS),
    amount: counted("Amount", { ...amountLimits, min: 1 }),
  })
  .superRefine(({ kind, unit }, context) => {
    if (unitsOf(kind).includes(unit)) return;
    context.addIssue({
      code: "custom",
      path: ["unit"],
      message: `Unit of this kind is one of: ${unitsOf(kind).join(", ")}`,
    });
  });
export type NewThing = z.output<typeof newThing>;

/** Sheets count each kind in one unit, so an order does too; what no sheet names may be anything. */
export function unitsOf(kind: OrderKind): readonly OrderUnit[] {
  if (kind === "other") return ORDER_UNITS;
  if (kind === "yeast") return ["pcs"];
  return kind === "acid" ? ["mL"] : ["g"];
}

const pack = {
  size: counted("Pack size", ORDER_RANGE.size),
  priceMinor: counted("Price", ORDER_RANGE.price),
  note: optionalText("Note of the supplier", 200),
} as const;

export const newOffer = z.strictObject({ ...item, ...pack });
export type NewOffer = z.output<typeof newOffer>;

export const offerChange = z.strictObject({ ...item, ...pack, offerId: recordId, lockVersion });
export type OfferChange = z.output<typeof offerChange>;

export const offerRemoval = z.strictObject({ ...item, offerId: recordId, lockVersion });
export type OfferRemoval = z.output<typeof offerRemoval>;

export const itemSettings = z.strictObject({
  ...item,
  lockVersion,
  leftOverTo: recordId.nullable(),
  cellsPerPiece: counted("Cells in a pack", { min: 1, max: 1_000_000 }).nullable(),
});
export type ItemSettings = z.output<typeof itemSettings>;

export const newSubstitution = z
  .strictObject({
    orderId: recordId,
    userId: recordId,
    fromItemId: recordId,
    toItemId: recordId,
    ratio: ranged("Ratio", { min: 0.01, max: 100, unit: "" }),
  })
  .refine(({ fromItemId, toItemId }) => fromItemId !== toItemId, {
    path: ["toItemId"],
    message: "Replacement is the same as what it replaces",
  });
export type NewSubstitution = z.output<typeof newSubstitution>;

export const substitutionDecision = z.strictObject({
  orderId: recordId,
  id: recordId,
  lockVersion,
  state: oneOf("Decision", ["agreed", "declined"]),
});
export type SubstitutionDecision = z.output<typeof substitutionDecision>;

/** An organiser lets one member name a wish in an order that is locked. */
export const lateLeave = z.strictObject({ orderId: recordId, userId: recordId, reason: written("Reason", 200) });
export type LateLeave = z.output<typeof lateLeave>;

/** Takes a late wish in, declines it, or takes the leave back. */
export const lateDecision = z.strictObject({
  orderId: recordId,
  id: recordId,
  lockVersion,
  state: oneOf("Decision", ["taken in", "declined", "withdrawn"]),
  /** Of the difference that the page showed; only taking in looks at it. */
  fingerprint: z.string().max(100),
});
export type LateDecision = z.output<typeof lateDecision>;

/** What came of one item, what it cost, and who gets how much of a short delivery: null shares it in proportion. */
export const receipt = z.strictObject({
  ...item,
  lockVersion,
  received: counted("Received", RECEIVED_LIMITS),
  paidMinor: counted("Paid", { min: 0, max: 100_000_000_000 }).nullable(),
  allotted: z.record(recordId, counted("Share", RECEIVED_LIMITS)).nullable(),
});
export type Receipt = z.output<typeof receipt>;

/** What was weighed out for one member; null takes it back. */
export const handOut = z.strictObject({
  ...item,
  userId: recordId,
  lockVersion,
  amount: counted("Weighed out", RECEIVED_LIMITS).nullable(),
});
export type HandOut = z.output<typeof handOut>;

/** Takes into one's own stock what was weighed out. */
export const stocking = z.strictObject({ ...item, lockVersion });
export type Stocking = z.output<typeof stocking>;

/** How a write ended: somebody else was quicker, and the page is out of date. */
export type OrderOutcome = { readonly ok: true } | { readonly ok: false; readonly reason: "stale" };
