"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { equipmentAnswers } from "@/lib/model/equipment-answers";
import { action } from "@/lib/server/action";
import { createEquipment } from "@/lib/server/equipment/writes";
import { requireMember } from "@/lib/server/session";

const answersInSpace = z.strictObject({ space: z.string(), answers: equipmentAnswers });

export const createEquipmentAction = action(answersInSpace, async ({ space, answers: equipment }) => {
  const member = await requireMember(space);
  const { id } = await createEquipment(member, { equipment });
  redirect(`/s/${member.spaceSlug}/equipment/${id}`);
});
