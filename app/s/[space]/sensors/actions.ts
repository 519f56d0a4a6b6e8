"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { newSensorKey, sensorKeyId } from "@/lib/model/sensor/sensor-token";
import { formAction } from "@/lib/server/action";
import { makeSensorKey, revokeSensorKey } from "@/lib/server/sensors/tokens";
import { requireMember } from "@/lib/server/session";

type Made = ActionResult<{ readonly token: string }>;

export async function makeKeyAction(space: string, previous: Made | null, form: FormData): Promise<Made> {
  const run = formAction(newSensorKey, async (key) => {
    const made = await makeSensorKey(await requireMember(space), key);
    revalidatePath(`/s/${space}/sensors`);
    return made;
  });
  return run(previous, form);
}

export async function revokeKeyAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(sensorKeyId, async ({ id }) => {
    await revokeSensorKey(await requireMember(space), id);
    revalidatePath(`/s/${space}/sensors`);
  });
  return run(previous, form);
}
