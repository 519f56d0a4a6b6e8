"use server";

import { z } from "zod";
import { equipmentChange } from "@/lib/model/equipment";
import { action } from "@/lib/server/action";
import { saveEquipment } from "@/lib/server/equipment/writes";
import { requireMember } from "@/lib/server/session";

const changeInSpace = equipmentChange.extend({ space: z.string() });

export const saveEquipmentAction = action(changeInSpace, async ({ space, ...change }) =>
  saveEquipment(await requireMember(space), change),
);
