"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { readPrice } from "@/lib/model/order/entered";
import { receipt, RECEIVED_LIMITS } from "@/lib/model/order/order-input";
import type { Preferences } from "@/lib/model/preferences";
import { formAction } from "@/lib/server/action";
import { receiveItem } from "@/lib/server/orders/receive";
import { requireMember } from "@/lib/server/session";
import { settled } from "../../../settled";
import { readAmount, typedAmount } from "../../../typed-amount";

type Done = ActionResult<void>;

const PART = "part.";

function receiptForm(preferences: Preferences) {
  return z
    .object({
      lockVersion: z.string(),
      measure: typedAmount.measure,
      currency: z.string(),
      received: typedAmount.amount,
      paid: z.string().max(40),
      sharing: z.enum(["proportion", "said"]),
    })
    .catchall(typedAmount.amount)
    .transform(({ lockVersion, measure, currency, received, paid, sharing, ...parts }, context): unknown => {
      const amountOf = (label: string, field: string, text: string): number =>
        readAmount({ label, field, measure, text, most: RECEIVED_LIMITS.max }, preferences, context);
      const said = Object.entries(parts).map(
        ([name, text]) => [name.slice(PART.length), amountOf("Part", name, text)] as const,
      );
      return {
        lockVersion,
        received: amountOf("Received", "received", received),
        paidMinor:
          paid.trim() === "" ? null : readPrice({ label: "Paid", field: "paid", text: paid, currency }, context),
        allotted: sharing === "said" ? Object.fromEntries(said) : null,
      };
    })
    .pipe(receipt.omit({ orderId: true, itemId: true }));
}

export async function receiveItemAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const member = await requireMember(space);
  const run = formAction(receiptForm(member.preferences), async (came) => {
    settled(space, orderId, await receiveItem(member, { ...came, orderId, itemId }));
  });
  return run(previous, form);
}
