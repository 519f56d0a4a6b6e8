"use server";

import type { ActionResult } from "@/lib/model/action-result";
import { lateDecision, lateLeave } from "@/lib/model/order/order-input";
import { formAction } from "@/lib/server/action";
import { decideLate, letLate } from "@/lib/server/orders/late-wishes";
import { requireMember } from "@/lib/server/session";
import { settled } from "../settled";

type Done = ActionResult<void>;

export async function letLateAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(lateLeave.omit({ orderId: true }), async (leave) => {
    await letLate(await requireMember(space), { ...leave, orderId });
    settled(space, orderId, { ok: true });
  });
  return run(previous, form);
}

export async function decideLateAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(lateDecision.omit({ orderId: true }), async (decision) => {
    settled(space, orderId, await decideLate(await requireMember(space), { ...decision, orderId }));
  });
  return run(previous, form);
}
