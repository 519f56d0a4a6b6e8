"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { entryChosen, entryPlaced } from "@/lib/model/tasting/prepare";
import { placeEntry, removeEntry } from "@/lib/server/tastings/entries";
import { nullIfEmpty } from "../../../../null-if-empty";
import { draftAction, type DraftAt } from "../../draft-action";

type Done = ActionResult<void>;

const placeForm = z
  .strictObject({
    ...{ id: z.string(), lockVersion: z.string(), entryNo: z.string() },
    ...{ flightNo: z.string(), styleCode: z.string() },
  })
  .transform((form): unknown => ({ ...form, styleCode: nullIfEmpty(form.styleCode) }))
  .pipe(entryPlaced);

export async function placeEntryAction(at: DraftAt, previous: Done | null, form: FormData): Promise<Done> {
  return draftAction(at, placeForm, placeEntry, { previous, form });
}

export async function removeEntryAction(
  at: DraftAt,
  flightNo: number,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const remove: typeof removeEntry = async (member, input) => {
    await removeEntry(member, input);
    redirect(`/s/${at.space}/tastings/${at.id}/prepare/flights/${String(flightNo)}`);
  };
  return draftAction(at, entryChosen, remove, { previous, form });
}
