"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { newCopy } from "@/lib/model/lineage";
import { formAction } from "@/lib/server/action";
import { copyRevision } from "@/lib/server/recipes/copy";
import { requireMember } from "@/lib/server/session";

const copyInto = newCopy.extend({ into: z.string({ error: "Copy into is not chosen" }) });

export async function copyRecipeAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(copyInto, async ({ into, ...copy }): Promise<void> => {
    const source = await requireMember(space);
    const target = await requireMember(into);
    const { id } = await copyRevision(source, target, copy);
    redirect(`/s/${target.spaceSlug}/recipes/${id}`);
  });
  return run(previous, form);
}
