"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { ActionResult } from "@/lib/model/action-result";
import { archiving, type KeepOutcome } from "@/lib/model/ingredient";
import { INGREDIENT_KINDS } from "@/lib/model/ingredient-kinds";
import { oneOf } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { moveLot } from "@/lib/server/lots/move";
import { archiveLot, createLot, saveLot } from "@/lib/server/lots/writes";
import { requireMember, type Member } from "@/lib/server/session";
import { lotChangeForm, lotMoveForm, newLotForm } from "./lot-form-schema";

type Kept = ActionResult<KeepOutcome>;

// The kind is bound to an action by its page, and still comes from the request.
const kindWord = oneOf("Kind", INGREDIENT_KINDS);

export async function createLotAction(
  space: string,
  kind: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const member = await requireMember(space);
  const run = formAction(newLotForm(kindWord.parse(kind), member.preferences), async (lot): Promise<void> => {
    const { id } = await createLot(member, lot);
    redirect(`/s/${member.spaceSlug}/ingredients/lots/${id}`);
  });
  return run(previous, form);
}

export async function saveLotAction(space: string, kind: string, previous: Kept | null, form: FormData): Promise<Kept> {
  const member = await requireMember(space);
  const schema = lotChangeForm(kindWord.parse(kind), member.preferences);
  const run = formAction(schema, async (change) => shownAnew(member, await saveLot(member, change)));
  return run(previous, form);
}

export async function moveLotAction(space: string, kind: string, previous: Kept | null, form: FormData): Promise<Kept> {
  const member = await requireMember(space);
  const schema = lotMoveForm(kindWord.parse(kind), member.preferences);
  const run = formAction(schema, async (move) => shownAnew(member, await moveLot(member, move)));
  return run(previous, form);
}

export async function archiveLotAction(space: string, previous: Kept | null, form: FormData): Promise<Kept> {
  const member = await requireMember(space);
  const run = formAction(archiving, async (change) => shownAnew(member, await archiveLot(member, change)));
  return run(previous, form);
}

function shownAnew({ spaceSlug }: Member, outcome: KeepOutcome): KeepOutcome {
  if (outcome.ok) revalidatePath(`/s/${spaceSlug}/ingredients`, "layout");
  return outcome;
}
