"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { recordId } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { giveBackLots } from "@/lib/server/lots/give-back";
import { requireMember } from "@/lib/server/session";

export async function giveBackLotsAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const member = await requireMember(space);
  const run = formAction(z.strictObject({ brewId: recordId }), async ({ brewId }): Promise<void> => {
    await giveBackLots(member, brewId);
    revalidatePath(`/s/${member.spaceSlug}/brews/${brewId}`);
  });
  return run(previous, form);
}
