"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { formAction } from "@/lib/server/action";
import { makeCalendarToken, revokeCalendarToken } from "@/lib/server/calendar/tokens";
import { requireMember } from "@/lib/server/session";

type Made = ActionResult<{ readonly token: string }>;

export async function makeCalendarAction(space: string, previous: Made | null, form: FormData): Promise<Made> {
  const run = formAction(z.strictObject({}), async () => {
    const made = await makeCalendarToken(await requireMember(space));
    revalidatePath(`/s/${space}/calendar`);
    return made;
  });
  return run(previous, form);
}

export async function revokeCalendarAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(z.strictObject({}), async () => {
    await revokeCalendarToken(await requireMember(space));
    revalidatePath(`/s/${space}/calendar`);
  });
  return run(previous, form);
}
