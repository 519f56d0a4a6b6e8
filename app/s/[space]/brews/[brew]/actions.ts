"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { brewDrop, brewMove } from "@/lib/model/brew-input";
import { readingInput } from "@/lib/model/reading-input";
import { action, formAction } from "@/lib/server/action";
import { AppError } from "@/lib/server/app-error";
import { dropBrew } from "@/lib/server/brews/drop";
import { moveBrew } from "@/lib/server/brews/move";
import { recordReading } from "@/lib/server/readings/writes";
import { requireMember } from "@/lib/server/session";
import { memberAtTheKettle } from "./member-at-the-kettle";

export async function recordReadingAction(
  space: string,
  input: unknown,
): Promise<ActionResult<{ readonly savedAt: Date }>> {
  const run = action(readingInput, async (reading) => {
    await recordReading(await memberAtTheKettle(space), reading);
    revalidatePath(`/s/${space}/brews/${reading.brewId}`, "layout");
    return { savedAt: new Date() };
  });
  return run(input);
}

export async function moveBrewAction(space: string, input: unknown): Promise<ActionResult<void>> {
  const run = action(brewMove, async (move) => {
    const moved = await moveBrew(await requireMember(space), move);
    revalidatePath(`/s/${space}/brews/${move.id}`, "layout");
    if (moved.ok) return;
    throw new AppError("CONFLICT", "Somebody else moved this brew a moment ago. The page now shows where it is.");
  });
  return run(input);
}

export async function dropBrewAction(
  space: string,
  brewId: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(brewDrop.omit({ id: true }), async (drop) => {
    await dropBrew(await requireMember(space), { ...drop, id: brewId });
    revalidatePath(`/s/${space}`, "layout");
  });
  return run(previous, form);
}
