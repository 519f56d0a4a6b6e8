"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { ActionResult } from "@/lib/model/action-result";
import { comparisonEnd, comparisonRename, newComparison } from "@/lib/model/summary/saved-comparison";
import { formAction } from "@/lib/server/action";
import { deleteComparison, renameComparison, saveComparison } from "@/lib/server/comparisons/writes";
import { requireMember } from "@/lib/server/session";

type Result = ActionResult<void>;

export async function saveComparisonAction(space: string, previous: Result | null, form: FormData): Promise<Result> {
  const run = formAction(newComparison, async (comparison): Promise<void> => {
    const { id } = await saveComparison(await requireMember(space), comparison);
    redirect(`/s/${space}/comparisons/${id}`);
  });
  return run(previous, form);
}

export async function renameComparisonAction(space: string, previous: Result | null, form: FormData): Promise<Result> {
  const run = formAction(comparisonRename, async (rename): Promise<void> => {
    await renameComparison(await requireMember(space), rename);
    revalidatePath(`/s/${space}/comparisons`, "layout");
  });
  return run(previous, form);
}

export async function deleteComparisonAction(space: string, previous: Result | null, form: FormData): Promise<Result> {
  const run = formAction(comparisonEnd, async (end): Promise<void> => {
    await deleteComparison(await requireMember(space), end);
    revalidatePath(`/s/${space}/comparisons`, "layout");
    redirect(`/s/${space}/comparisons`);
  });
  return run(previous, form);
}
