"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { planChange } from "@/lib/model/shared-brew";
import { formAction } from "@/lib/server/action";
import { AppError } from "@/lib/server/app-error";
import { requireMember } from "@/lib/server/session";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { planFields, windowAndRules } from "../../read-plan-form";

const planForm = z
  .strictObject({
    id: z.string(),
    baseVersion: z.string(),
    rev: z.string(),
    state: z.string(),
    note: z.string(),
    ...planFields,
  })
  .transform(({ id, baseVersion, rev, state, note, ...fields }): unknown => {
    return { id, baseVersion, rev, state, note, ...windowAndRules(fields) };
  })
  .pipe(planChange);

export async function changePlanAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(planForm, async (change): Promise<void> => {
    const outcome = await changePlan(await requireMember(space), change);
    if (outcome.ok) redirect(`/s/${space}/shared-brews/${change.id}`);
    if (outcome.reason === "unchanged") throw new AppError("INVALID", "Nothing in this plan is different.");
    throw new AppError(
      "CONFLICT",
      `Somebody else has changed the plan: it is at version ${String(outcome.version)} now. Look at it, then change it again.`,
    );
  });
  return run(previous, form);
}
