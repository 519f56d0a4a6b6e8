"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { newTasting } from "@/lib/model/tasting/prepare";
import { formAction } from "@/lib/server/action";
import { requireMember } from "@/lib/server/session";
import { createTasting } from "@/lib/server/tastings/create";
import { nullIfEmpty } from "../null-if-empty";

const tastingForm = z
  .strictObject({
    title: z.string(),
    heldOn: z.string(),
    stewardId: z.string(),
    sharedBrewId: z.string(),
    note: z.string(),
  })
  .transform((form): unknown => ({
    ...form,
    heldOn: nullIfEmpty(form.heldOn),
    sharedBrewId: nullIfEmpty(form.sharedBrewId),
  }))
  .pipe(newTasting);

export async function createTastingAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(tastingForm, async (tasting): Promise<void> => {
    const member = await requireMember(space);
    const { id } = await createTasting(member, tasting);
    const own = `/s/${space}/tastings/${id}`;
    // Whoever named another steward knows nothing from here on.
    redirect(tasting.stewardId === member.userId ? `${own}/prepare` : own);
  });
  return run(previous, form);
}
