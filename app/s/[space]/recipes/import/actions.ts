"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { recordId } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { withdrawImport } from "@/lib/server/exchange/imports";
import { requireMember } from "@/lib/server/session";

export async function withdrawImportAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(z.strictObject({ id: recordId }), async ({ id }) => {
    await withdrawImport(await requireMember(space), id);
    revalidatePath(`/s/${space}/recipes`, "layout");
  });
  return run(previous, form);
}
