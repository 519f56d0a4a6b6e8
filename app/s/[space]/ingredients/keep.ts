import "server-only";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import type { KeepOutcome } from "@/lib/model/ingredient";
import { INGREDIENT_KINDS } from "@/lib/model/ingredient-kinds";
import { oneOf } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { requireMember, type Member } from "@/lib/server/session";

export type Kept = ActionResult<KeepOutcome>;
export type Made = ActionResult<void>;

/** The kind is bound to an action by its page, and still comes from the request. */
export const kindWord = oneOf("Kind", INGREDIENT_KINDS);

/** What a form of the stock is read by, for who sends it: numbers are in their units. */
type SchemaFor<T> = (member: Member) => z.ZodType<T>;

/** Makes something new of a form, and goes to its page; `under` is where the pages of its kind are. */
export async function made<T>(
  a: { readonly space: string; readonly previous: Made | null; readonly form: FormData; readonly under: string },
  schemaFor: SchemaFor<T>,
  create: (member: Member, input: T) => Promise<{ readonly id: string }>,
): Promise<Made> {
  const member = await requireMember(a.space);
  const run = formAction(schemaFor(member), async (input): Promise<void> => {
    const { id } = await create(member, input);
    redirect(`/s/${member.spaceSlug}/${a.under}/${id}`);
  });
  return run(a.previous, a.form);
}

/** Changes something by a form, and shows the stock anew unless somebody else was quicker. */
export async function kept<T>(
  a: { readonly space: string; readonly previous: Kept | null; readonly form: FormData },
  schemaFor: SchemaFor<T>,
  change: (member: Member, input: T) => Promise<KeepOutcome>,
): Promise<Kept> {
  const member = await requireMember(a.space);
  const run = formAction(schemaFor(member), async (input) => {
    const outcome = await change(member, input);
    if (outcome.ok) revalidatePath(`/s/${member.spaceSlug}/ingredients`, "layout");
    return outcome;
  });
  return run(a.previous, a.form);
}
