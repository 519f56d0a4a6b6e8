"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { formAction } from "@/lib/server/action";
import { requireMember, type Member } from "@/lib/server/session";
import { closeTasting, revealTasting } from "@/lib/server/tastings/close";
import { remindJudges } from "@/lib/server/tastings/remind";

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

const nothing = z.strictObject({});

/** Answers with the number of judges that were told. */
export async function remindJudgesAction(
  space: string,
  id: string,
  previous: ActionResult<{ readonly judges: number }> | null,
  form: FormData,
): Promise<ActionResult<{ readonly judges: number }>> {
  const run = formAction(nothing, async () => {
    const told = await remindJudges(await requireMember(space), { id });
    revalidatePath(`/s/${space}/tastings/${id}`, "layout");
    return told;
  });
  return run(previous, form);
}
