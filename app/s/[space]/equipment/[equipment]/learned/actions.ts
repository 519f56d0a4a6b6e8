"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { learnedAcceptance } from "@/lib/model/learning/learned-acceptance";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { action } from "@/lib/server/action";
import { acceptLearned } from "@/lib/server/learning/accept";
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
