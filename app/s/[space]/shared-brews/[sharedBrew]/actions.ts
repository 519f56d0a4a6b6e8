"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { planSeen } from "@/lib/model/shared-brew";
import { formAction } from "@/lib/server/action";
import { requireMember } from "@/lib/server/session";
import { markPlanSeen } from "@/lib/server/shared-brews/participants";

export async function markPlanSeenAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(planSeen, async (seen) => {
    await markPlanSeen(await requireMember(space), seen);
    revalidatePath(`/s/${space}`, "layout");
  });
  return run(previous, form);
}
