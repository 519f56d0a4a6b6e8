"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { countedUnit, ENTRY_MEASURES } from "@/lib/model/order/entered";
import { newThing, orderChange, orderMove, substitutionDecision } from "@/lib/model/order/order-input";
import { formAction } from "@/lib/server/action";
import { moveOrder } from "@/lib/server/orders/move";
import { decideSubstitution } from "@/lib/server/orders/substitutions";
import { addThing, saveOrder } from "@/lib/server/orders/writes";
import { requireMember } from "@/lib/server/session";
import { settled } from "../settled";
import { readAmount, typedAmount } from "../typed-amount";

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

const changeForm = z
  .strictObject({ title: z.string(), closesAt: z.string(), note: z.string(), lockVersion: z.string() })
  .transform((form): unknown => ({ ...form, closesAt: form.closesAt === "" ? null : form.closesAt }))
  .pipe(orderChange.omit({ orderId: true }));

export async function changeOrderAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(changeForm, async (change) => {
    settled(space, orderId, await saveOrder(await requireMember(space), { ...change, orderId }));
  });
  return run(previous, form);
}

/** Kind and measure are one choice; the amount is typed in the measure that goes with it. */
const thingForm = z.strictObject({ what: z.string(), name: z.string(), amount: typedAmount.amount });

export async function addThingAction(
  space: string,
  orderId: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const member = await requireMember(space);
  const asked = thingForm
    .transform(({ what, name, amount: text }, context): unknown => {
      const [kind, typedIn] = what.split("/");
      const measure = ENTRY_MEASURES.find((each) => each === typedIn) ?? "pcs";
      const amount = readAmount({ label: "Amount", measure, text }, member.preferences, context);
      return { orderId, kind, unit: countedUnit(measure), name, amount };
    })
    .pipe(newThing);
  const run = formAction(asked, async (thing) => {
    await addThing(member, thing);
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
