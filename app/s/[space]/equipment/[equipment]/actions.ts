"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { equipmentChange } from "@/lib/model/equipment";
import { action, formAction } from "@/lib/server/action";
import { saveEquipment } from "@/lib/server/equipment/writes";
import { requireMember } from "@/lib/server/session";
import { beginTrial } from "@/lib/server/trials/begin";

const changeInSpace = equipmentChange.extend({ space: z.string() });

export const saveEquipmentAction = action(changeInSpace, async ({ space, ...change }) =>
  saveEquipment(await requireMember(space), change),
);

export async function beginTrialAction(
  space: string,
  equipmentId: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(z.strictObject({}), async (): Promise<void> => {
    const member = await requireMember(space);
    const { id } = await beginTrial(member, equipmentId);
    redirect(`/s/${member.spaceSlug}/equipment/${equipmentId}/trials/${id}`);
  });
  return run(previous, form);
}
