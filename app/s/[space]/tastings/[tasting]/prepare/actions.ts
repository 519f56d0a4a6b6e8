"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { draftSeen, newFlight, tastingChange } from "@/lib/model/tasting/prepare";
import { changeTasting, discardTasting } from "@/lib/server/tastings/create";
import { addFlight } from "@/lib/server/tastings/flights";
import { openTasting } from "@/lib/server/tastings/open";
import { nullIfEmpty } from "../../null-if-empty";
import { draftAction } from "./draft-action";

type Done = ActionResult<void>;

const seen = { id: z.string(), lockVersion: z.string() };

const changeForm = z
  .strictObject({ ...seen, title: z.string(), heldOn: z.string(), note: z.string() })
  .transform((form): unknown => ({ ...form, heldOn: nullIfEmpty(form.heldOn) }))
  .pipe(tastingChange);

const flightForm = z
  .strictObject({ ...seen, flightTitle: z.string(), kind: z.string(), palateLimit: z.string() })
  .transform(({ flightTitle: title, ...form }): unknown => ({
    ...form,
    title,
    palateLimit: nullIfEmpty(form.palateLimit),
  }))
  .pipe(newFlight);

export async function changeTastingAction(
  space: string,
  id: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  return draftAction({ space, id }, changeForm, changeTasting, { previous, form });
}

export async function addFlightAction(space: string, id: string, previous: Done | null, form: FormData): Promise<Done> {
  return draftAction({ space, id }, flightForm, addFlight, { previous, form });
}

export async function openTastingAction(
  space: string,
  id: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  return draftAction({ space, id }, draftSeen, openTasting, { previous, form });
}

export async function discardTastingAction(
  space: string,
  id: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  const discard: typeof discardTasting = async (member, input) => {
    await discardTasting(member, input);
    revalidatePath(`/s/${space}/tastings`);
    redirect(`/s/${space}/tastings`);
  };
  return draftAction({ space, id }, draftSeen, discard, { previous, form });
}
