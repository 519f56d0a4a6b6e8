"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { equipmentAnswers } from "@/lib/model/equipment-answers";
import { action } from "@/lib/server/action";
import { createEquipment } from "@/lib/server/equipment/writes";
import { startFromKind } from "@/lib/server/learning/start";
import { requireAbility } from "@/lib/server/permissions";
import { requireMember } from "@/lib/server/session";

const answersInSpace = z.strictObject({ space: z.string(), answers: equipmentAnswers });

export const createEquipmentAction = action(answersInSpace, async ({ space, answers: typical }) => {
  const member = await requireMember(space);
  requireAbility(member, "keep equipment");
  const { id } = await createEquipment(member, { equipment: await startFromKind(member, typical) });
  redirect(`/s/${member.spaceSlug}/equipment/${id}`);
});
