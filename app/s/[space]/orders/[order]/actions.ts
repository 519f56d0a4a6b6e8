"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { readAmount, typedAmount } from "@/lib/model/order/entered";
import { newThing, orderMove, substitutionDecision } from "@/lib/model/order/order-input";
import { formAction } from "@/lib/server/action";
import { moveOrder } from "@/lib/server/orders/move";
import { decideSubstitution } from "@/lib/server/orders/substitutions";
import { addThing } from "@/lib/server/orders/writes";
import { requireMember } from "@/lib/server/session";
import { settled } from "../settled";

type Done = ActionResult<void>;

export async function moveOrderAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(orderMove.omit({ orderId: true }), async (move) => {
    settled(space, orderId, await moveOrder(await requireMember(space), { ...move, orderId }));
  });
  return run(previous, form);
}

/** Kind and unit are one choice; the amount is typed in the unit that goes with it. */
const thingForm = z.strictObject({ what: z.string(), name: z.string(), amount: typedAmount.amount });

export async function addThingAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const asked = thingForm
    .transform(({ what, name, amount }, context): unknown => {
      const [kind, unit, factor = "1"] = what.split("/");
      return { orderId, kind, unit, name, amount: readAmount("Amount", { amount, factor }, context) };
    })
    .pipe(newThing);
  const run = formAction(asked, async (thing) => {
    await addThing(await requireMember(space), thing);
    settled(space, orderId, { ok: true });
  });
  return run(previous, form);
}

export async function decideSubstitutionAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(substitutionDecision.omit({ orderId: true }), async (decision) => {
    settled(space, orderId, await decideSubstitution(await requireMember(space), { ...decision, orderId }));
  });
  return run(previous, form);
}
