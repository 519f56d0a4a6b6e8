"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { enteredAmount, readAmount, readPrice, typedAmount } from "@/lib/model/order/entered";
import {
  itemSettings,
  newOffer,
  newSubstitution,
  offerRemoval,
  orderWant,
  receipt,
} from "@/lib/model/order/order-input";
import { formAction } from "@/lib/server/action";
import { receiveItem } from "@/lib/server/orders/receive";
import { proposeSubstitution } from "@/lib/server/orders/substitutions";
import { addOffer, removeOffer, saveItem, saveWant } from "@/lib/server/orders/writes";
import { requireMember } from "@/lib/server/session";
import { settled } from "../../../settled";

type Done = ActionResult<void>;

const ids = { orderId: true, itemId: true } as const;

const wantForm = z
  .strictObject({ ...typedAmount, lockVersion: z.string() })
  .transform(({ lockVersion, ...typed }, context): unknown => ({
    lockVersion,
    amount: readAmount("Amount", typed, context),
  }))
  .pipe(orderWant.omit(ids));

export async function saveWantAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const run = formAction(wantForm, async (want) => {
    settled(space, orderId, await saveWant(await requireMember(space), { ...want, orderId, itemId }));
  });
  return run(previous, form);
}

const offerForm = z
  .strictObject({
    size: z.string().max(40),
    price: z.string().max(40),
    note: z.string(),
    factor: typedAmount.factor,
    currency: z.string(),
  })
  .transform(({ size, price, note, factor, currency }, context): unknown => {
    const read = enteredAmount("Pack size", size, Number(factor));
    if ("refusal" in read) context.addIssue({ code: "custom", path: ["size"], message: read.refusal });
    const priceMinor = readPrice({ label: "Price", field: "price", text: price, currency }, context);
    return { size: "amount" in read ? read.amount : 0, priceMinor, note };
  })
  .pipe(newOffer.omit(ids));

export async function addOfferAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const run = formAction(offerForm, async (offer) => {
    await addOffer(await requireMember(space), { ...offer, orderId, itemId });
    settled(space, orderId, { ok: true });
  });
  return run(previous, form);
}

export async function removeOfferAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const run = formAction(offerRemoval.omit(ids), async (removal) => {
    settled(space, orderId, await removeOffer(await requireMember(space), { ...removal, orderId, itemId }));
  });
  return run(previous, form);
}

const emptyIsNull = z.string().transform((text) => (text.trim() === "" ? null : text));

const settingsForm = z
  .strictObject({ lockVersion: z.string(), leftOverTo: emptyIsNull, cellsPerPiece: emptyIsNull })
  .transform((form): unknown => form)
  .pipe(itemSettings.omit(ids));

export async function saveItemAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const run = formAction(settingsForm, async (settings) => {
    settled(space, orderId, await saveItem(await requireMember(space), { ...settings, orderId, itemId }));
  });
  return run(previous, form);
}

const substitutionForm = z.strictObject({ userId: z.string(), toItemId: z.string(), ratio: z.string() });

export async function proposeSubstitutionAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const proposal = substitutionForm
    .transform((typed): unknown => ({ ...typed, ratio: typed.ratio.replace(",", "."), orderId, fromItemId: itemId }))
    .pipe(newSubstitution);
  const run = formAction(proposal, async (asked) => {
    await proposeSubstitution(await requireMember(space), asked);
    settled(space, orderId, { ok: true });
  });
  return run(previous, form);
}

const PART = "part.";

const receiptForm = z
  .object({
    lockVersion: z.string(),
    factor: typedAmount.factor,
    currency: z.string(),
    received: z.string().max(40),
    paid: z.string().max(40),
    sharing: z.enum(["proportion", "said"]),
  })
  .catchall(z.string().max(40))
  .transform(({ lockVersion, factor, currency, received, paid, sharing, ...parts }, context): unknown => {
    const amountOf = (label: string, field: string, text: string): number => {
      const read = enteredAmount(label, text, Number(factor));
      if ("amount" in read) return read.amount;
      context.addIssue({ code: "custom", path: [field], message: read.refusal });
      return 0;
    };
    const said = Object.entries(parts).map(
      ([name, text]) => [name.slice(PART.length), amountOf("Part", name, text)] as const,
    );
    return {
      lockVersion,
      received: amountOf("Received", "received", received),
      paidMinor: paid.trim() === "" ? null : readPrice({ label: "Paid", field: "paid", text: paid, currency }, context),
      allotted: sharing === "said" ? Object.fromEntries(said) : null,
    };
  })
  .pipe(receipt.omit(ids));

export async function receiveItemAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const run = formAction(receiptForm, async (came) => {
    settled(space, orderId, await receiveItem(await requireMember(space), { ...came, orderId, itemId }));
  });
  return run(previous, form);
}
