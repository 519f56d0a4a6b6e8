"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { paperChoice, paperSheet } from "@/lib/model/tasting/sheet-paper";
import { formAction } from "@/lib/server/action";
import { requireMember } from "@/lib/server/session";
import { enterPaperChoice, enterPaperSheet } from "@/lib/server/tastings/sheets-paper";

type Done = ActionResult<void>;

export async function enterSheetAction(
  space: string,
  id: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(paperSheet, async (sheet): Promise<void> => {
    await enterPaperSheet(await requireMember(space), id, sheet);
    revalidatePath(`/s/${space}/tastings/${id}`, "layout");
  });
  return run(previous, form);
}

export async function enterChoiceAction(
  space: string,
  id: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const run = formAction(paperChoice, async (choice): Promise<void> => {
    await enterPaperChoice(await requireMember(space), id, choice);
    revalidatePath(`/s/${space}/tastings/${id}`, "layout");
  });
  return run(previous, form);
}
