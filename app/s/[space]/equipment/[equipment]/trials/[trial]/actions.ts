"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { figureAcceptance } from "@/lib/model/trial/trial";
import { action } from "@/lib/server/action";
import { requireMember } from "@/lib/server/session";
import { acceptFigures } from "@/lib/server/trials/accept-figures";

export async function acceptFiguresAction(
  space: string,
  equipmentId: string,
  input: unknown,
): Promise<ActionResult<SaveOutcome>> {
  const run = action(figureAcceptance, async (acceptance) => {
    const saved = await acceptFigures(await requireMember(space), { ...acceptance, equipmentId });
    revalidatePath(`/s/${space}/equipment/${equipmentId}`, "layout");
    return saved;
  });
  return run(input);
}
