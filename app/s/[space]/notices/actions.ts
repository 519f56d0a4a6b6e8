"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { noticesRead } from "@/lib/model/notice";
import { formAction } from "@/lib/server/action";
import { markRead } from "@/lib/server/notices/writes";
import { requireMember } from "@/lib/server/session";

const readForm = z
  .strictObject({ ids: z.string() })
  .transform(({ ids }): unknown => ({ ids: ids.split(" ") }))
  .pipe(noticesRead);

export async function markReadAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(readForm, async (notices) => {
    await markRead(await requireMember(space), notices);
    revalidatePath(`/s/${space}`, "layout");
  });
  return run(previous, form);
}
