"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { kettleGift } from "@/lib/model/learning/kettle-gift";
import { learnedAcceptance } from "@/lib/model/learning/learned-acceptance";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { action, formAction } from "@/lib/server/action";
import { acceptLearned } from "@/lib/server/learning/accept";
import { giveKettle } from "@/lib/server/learning/contributions";
import { requireMember } from "@/lib/server/session";

export async function acceptLearnedAction(
  space: string,
  equipmentId: string,
  input: unknown,
): Promise<ActionResult<SaveOutcome>> {
  const run = action(learnedAcceptance, async (acceptance) => {
    const saved = await acceptLearned(await requireMember(space), { ...acceptance, equipmentId });
    revalidatePath(`/s/${space}/equipment/${equipmentId}`, "layout");
    return saved;
  });
  return run(input);
}

export async function giveKettleAction(
  space: string,
  equipmentId: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(kettleGift, async ({ isGiven }) => {
    await giveKettle(await requireMember(space), { equipmentId, isGiven });
    revalidatePath(`/s/${space}/equipment/${equipmentId}/learned`);
  });
  return run(previous, form);
}
