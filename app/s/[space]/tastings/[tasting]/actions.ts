"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { formAction } from "@/lib/server/action";
import { requireMember, type Member } from "@/lib/server/session";
import { closeTasting, revealTasting } from "@/lib/server/tastings/close";

const confirmed = z.strictObject({ sure: z.literal("yes") });

type Done = ActionResult<void>;
type Move = (member: Member, tasting: { readonly id: string }) => Promise<void>;

async function move(space: string, id: string, by: Move, previous: Done | null, form: FormData): Promise<Done> {
  const run = formAction(confirmed, async (): Promise<void> => {
    await by(await requireMember(space), { id });
    revalidatePath(`/s/${space}/tastings`, "layout");
  });
  return run(previous, form);
}

export async function closeTastingAction(
  space: string,
  id: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  return move(space, id, closeTasting, previous, form);
}

export async function revealTastingAction(
  space: string,
  id: string,
  previous: Done | null,
  form: FormData,
): Promise<Done> {
  return move(space, id, revealTasting, previous, form);
}
