"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { readPrice } from "@/lib/model/order/entered";
import { newOffer, offerChange, offerRemoval } from "@/lib/model/order/order-input";
import type { Preferences } from "@/lib/model/preferences";
import { formAction } from "@/lib/server/action";
import { addOffer, removeOffer, saveOffer } from "@/lib/server/orders/offers";
import { requireMember } from "@/lib/server/session";
import { settled } from "../../../settled";
import { readAmount, typedAmount } from "../../../typed-amount";

type Done = ActionResult<void>;

const ids = { orderId: true, itemId: true } as const;

const fields = {
  size: typedAmount.amount,
  measure: typedAmount.measure,
  price: z.string().max(40),
  note: z.string(),
  currency: z.string(),
} as const;

type Fields = Readonly<Record<Exclude<keyof typeof fields, "measure">, string>> & {
  readonly measure: z.output<typeof fields.measure>;
};

/** Size and price as the service takes them; each is refused at its own field. */
function packOf({ size, measure, price, currency, note }: Fields, preferences: Preferences, context: z.RefinementCtx) {
  return {
    size: readAmount({ label: "Pack size", field: "size", measure, text: size }, preferences, context),
    priceMinor: readPrice({ label: "Price", field: "price", text: price, currency }, context),
    note,
  };
}

export async function addOfferAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const member = await requireMember(space);
  const schema = z
    .strictObject(fields)
    .transform((pack, context): unknown => packOf(pack, member.preferences, context))
    .pipe(newOffer.omit(ids));
  const run = formAction(schema, async (offer) => {
    await addOffer(member, { ...offer, orderId, itemId });
    settled(space, orderId, { ok: true });
  });
  return run(previous, form);
}

export async function saveOfferAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const member = await requireMember(space);
  const schema = z
    .strictObject({ ...fields, offerId: z.string(), lockVersion: z.string() })
    .transform(({ offerId, lockVersion, ...pack }, context): unknown => ({
      ...packOf(pack, member.preferences, context),
      offerId,
      lockVersion,
    }))
    .pipe(offerChange.omit(ids));
  const run = formAction(schema, async (change) => {
    settled(space, orderId, await saveOffer(member, { ...change, orderId, itemId }));
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
