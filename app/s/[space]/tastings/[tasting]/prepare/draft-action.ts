import "server-only";
import { revalidatePath } from "next/cache";
import type { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { formAction } from "@/lib/server/action";
import { requireMember, type Member } from "@/lib/server/session";

/** Which tasting a form belongs to, bound to its action. */
export interface DraftAt {
  readonly space: string;
  readonly id: string;
}

type Run<S extends z.ZodType> = (member: Member, input: z.output<S>) => Promise<unknown>;

/** One step of preparing: parsed, done as its steward, and the pages of the tasting shown anew. */
export async function draftAction<S extends z.ZodType>(
  { space, id }: DraftAt,
  schema: S,
  run: Run<S>,
  answered: { readonly previous: ActionResult<void> | null; readonly form: FormData },
): Promise<ActionResult<void>> {
  // The tasting comes from the address of the form; a field of its own would be refused as unknown.
  answered.form.set("id", id);
  const step = formAction(schema, async (input): Promise<void> => {
    await run(await requireMember(space), input);
    revalidatePath(`/s/${space}/tastings/${id}`, "layout");
  });
  return step(answered.previous, answered.form);
}
