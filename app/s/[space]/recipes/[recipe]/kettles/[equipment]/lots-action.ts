"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { adaptationChange } from "@/lib/model/adaptation";
import { formAction } from "@/lib/server/action";
import { saveAdaptation, type AdaptationOutcome } from "@/lib/server/adaptations/writes";
import { requireMember } from "@/lib/server/session";
import { LOT_FIELD } from "./lot-field";

const MOST_FIELDS = 100;

/** The form has a control for each row, and an empty one takes no lot. */
const chosenLots = z
  .record(z.string().max(80), z.string().max(80))
  .refine((fields) => Object.keys(fields).length <= MOST_FIELDS, { message: "A recipe has at most 80 rows" })
  .transform(({ recipeId, rev, equipmentId, lockVersion, volume, way, ...rows }): unknown => ({
    ...{ recipeId, rev, equipmentId, lockVersion },
    choice: { volume, way: way === "" ? null : way, lots: Object.fromEntries(lotsOf(rows)) },
  }))
  .pipe(adaptationChange);

function lotsOf(rows: Readonly<Record<string, string>>): readonly (readonly [string, string])[] {
  return Object.entries(rows).flatMap(([field, lot]) => {
    // A control that the form does not have leaves a path that the choice's own schema refuses.
    const path = field.startsWith(LOT_FIELD) ? field.slice(LOT_FIELD.length) : field;
    return lot === "" ? [] : [[path, lot] as const];
  });
}

/** Keeps which lot each row is taken from; the sheet is then solved with them. */
export async function chooseLotsAction(
  space: string,
  previous: ActionResult<AdaptationOutcome> | null,
  form: FormData,
): Promise<ActionResult<AdaptationOutcome>> {
  const member = await requireMember(space);
  const run = formAction(chosenLots, async (change) => {
    const outcome = await saveAdaptation(member, change);
    if (outcome.ok) revalidatePath(`/s/${member.spaceSlug}/recipes/${change.recipeId}`, "layout");
    return outcome;
  });
  return run(previous, form);
}
