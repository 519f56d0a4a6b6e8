"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { handOut, RECEIVED_LIMITS, stocking } from "@/lib/model/order/order-input";
import type { Preferences } from "@/lib/model/preferences";
import { formAction } from "@/lib/server/action";
import { handOutShare } from "@/lib/server/orders/receive";
import { stockShare } from "@/lib/server/orders/to-stock";
import { requireMember } from "@/lib/server/session";
import { settled } from "../../settled";
import { readAmount, typedAmount } from "../../typed-amount";

type Done = ActionResult<void>;

/** An empty weight takes back what was noted. */
function weighing(preferences: Preferences) {
  return z
    .strictObject({ ...typedAmount, itemId: z.string(), userId: z.string(), lockVersion: z.string() })
    .transform(({ measure, amount: text, ...share }, context): unknown => {
      const typed = { label: "Weighed out", measure, text, most: RECEIVED_LIMITS.max };
      return { ...share, amount: text.trim() === "" ? null : readAmount(typed, preferences, context) };
    })
    .pipe(handOut.omit({ orderId: true }));
}

export async function handOutAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const member = await requireMember(space);
  const run = formAction(weighing(member.preferences), async (share) => {
    settled(space, orderId, await handOutShare(member, { ...share, orderId }));
  });
  return run(previous, form);
}

export async function stockShareAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(stocking.omit({ orderId: true }), async (share) => {
    settled(space, orderId, await stockShare(await requireMember(space), { ...share, orderId }));
  });
  return run(previous, form);
}
