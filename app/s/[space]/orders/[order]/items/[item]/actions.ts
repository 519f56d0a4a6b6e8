"use server";

import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { itemSettings, newSubstitution, orderWant } from "@/lib/model/order/order-input";
import type { Preferences } from "@/lib/model/preferences";
import { formAction } from "@/lib/server/action";
import { askLate } from "@/lib/server/orders/late-wishes";
import { proposeSubstitution } from "@/lib/server/orders/substitutions";
import { saveItem, saveWant } from "@/lib/server/orders/writes";
import { requireMember } from "@/lib/server/session";
import { settled } from "../../../settled";
import { readAmount, typedAmount } from "../../../typed-amount";

type Done = ActionResult<void>;

const ids = { orderId: true, itemId: true } as const;

function wantForm(preferences: Preferences) {
  return z
    .strictObject({ ...typedAmount, lockVersion: z.string() })
    .transform(({ lockVersion, amount: text, measure }, context): unknown => ({
      lockVersion,
      amount: readAmount({ label: "Amount", measure, text }, preferences, context),
    }))
    .pipe(orderWant.omit(ids));
}

export async function saveWantAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const member = await requireMember(space);
  const run = formAction(wantForm(member.preferences), async (want) => {
    settled(space, orderId, await saveWant(member, { ...want, orderId, itemId }));
  });
  return run(previous, form);
}

/** The same in a locked order, by somebody whom an organiser lets. */
export async function askLateAction(
  ...[space, orderId, itemId, previous, form]: [string, string, string, Done | null, FormData]
): Promise<Done> {
  const member = await requireMember(space);
  const run = formAction(wantForm(member.preferences), async (want) => {
    settled(space, orderId, await askLate(member, { ...want, orderId, itemId }));
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
