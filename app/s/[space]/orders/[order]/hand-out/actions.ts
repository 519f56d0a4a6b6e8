"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { readAmount, typedAmount } from "@/lib/model/order/entered";
import { handOut, stocking } from "@/lib/model/order/order-input";
import { formAction } from "@/lib/server/action";
import { handOutShare } from "@/lib/server/orders/receive";
import { stockShare } from "@/lib/server/orders/to-stock";
import { requireMember } from "@/lib/server/session";
import { settled } from "../../settled";

type Done = ActionResult<void>;

/** An empty weight takes back what was noted. */
const weighing = z
  .strictObject({ ...typedAmount, itemId: z.string(), userId: z.string(), lockVersion: z.string() })
  .transform(({ factor, amount, ...share }, context): unknown => ({
    ...share,
    amount: amount.trim() === "" ? null : readAmount("Weighed out", { amount, factor }, context),
  }))
  .pipe(handOut.omit({ orderId: true }));

export async function handOutAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(weighing, async (share) => {
    settled(space, orderId, await handOutShare(await requireMember(space), { ...share, orderId }));
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
