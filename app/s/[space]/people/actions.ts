"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { newInvitation } from "@/lib/model/invitation";
import { recordId } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { createInvitation, revokeInvitation } from "@/lib/server/invitations/writes";
import { makeOrganiser } from "@/lib/server/spaces/hand-over";
import { requireMember } from "@/lib/server/session";

type MadeInvitation = ActionResult<{ readonly token: string }>;

export async function createInvitationAction(
  space: string,
  previous: MadeInvitation | null,
  form: FormData,
): Promise<MadeInvitation> {
  const run = formAction(newInvitation, async (invitation) => {
    const made = await createInvitation(await requireMember(space), invitation);
    revalidatePath(`/s/${space}/people`);
    return made;
  });
  return run(previous, form);
}

export async function revokeInvitationAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(z.strictObject({ id: recordId }), async ({ id }) => {
    await revokeInvitation(await requireMember(space), id);
    revalidatePath(`/s/${space}/people`);
  });
  return run(previous, form);
}

export async function makeOrganiserAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(
    z.strictObject({ person: z.string().min(1, "Person is not chosen").pipe(recordId) }),
    async ({ person }) => {
      await makeOrganiser(await requireMember(space), person);
      revalidatePath(`/s/${space}/people`);
    },
  );
  return run(previous, form);
}
