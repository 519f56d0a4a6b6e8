"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { withdrawal } from "@/lib/model/publication";
import { newResult } from "@/lib/model/published-result";
import { formAction } from "@/lib/server/action";
import { publishResult, withdrawResult } from "@/lib/server/publications/publish-result";
import { requireMember } from "@/lib/server/session";

export async function publishResultAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(newResult, async (order): Promise<void> => {
    await publishResult(await requireMember(space), order);
    revalidatePath(`/s/${space}/shared-brews/${order.sharedBrewId}/publish`);
  });
  return run(previous, form);
}

export async function withdrawResultAction(
  space: string,
  sharedBrew: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(withdrawal, async ({ address }): Promise<void> => {
    await withdrawResult(await requireMember(space), address);
    revalidatePath(`/s/${space}/shared-brews/${sharedBrew}/publish`);
  });
  return run(previous, form);
}
