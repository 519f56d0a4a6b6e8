"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { NO_CHOICE } from "@/lib/model/adaptation";
import { joining, leaving, participationChange } from "@/lib/model/participation";
import { recordId } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { saveAdaptation } from "@/lib/server/adaptations/writes";
import { AppError } from "@/lib/server/app-error";
import { planBrew } from "@/lib/server/brews/plan";
import { requireAbility } from "@/lib/server/permissions";
import { requireMember } from "@/lib/server/session";
import { findSheet, type KettleSheet } from "@/lib/server/shared-brews/find-sheet";
import { changePart, joinSharedBrew, leaveSharedBrew } from "@/lib/server/shared-brews/participants";
import { partFields, partOf } from "./read-part-form";

type Answer = ActionResult<void>;

const STALE = "Somebody has changed this since the page was opened: look at it again.";

const joinForm = z
  .strictObject({ sharedBrewId: z.string(), equipmentId: z.string(), planVersion: z.string(), ...partFields })
  .transform(({ sharedBrewId, equipmentId, planVersion, ...fields }): unknown => {
    return { sharedBrewId, equipmentId, planVersion, ...partOf(fields) };
  })
  .pipe(joining);

export async function joinAction(space: string, previous: Answer | null, form: FormData): Promise<Answer> {
  const run = formAction(joinForm, async (input): Promise<void> => {
    const member = await requireMember(space);
    requireAbility(member, "brew");
    requireFitting(requireSheet(await findSheet(member, input)));
    await joinSharedBrew(member, input);
    revalidatePath(`/s/${space}`, "layout");
  });
  return run(previous, form);
}

const partForm = z
  .strictObject({ sharedBrewId: z.string(), equipmentId: z.string(), lockVersion: z.string(), ...partFields })
  .transform(({ sharedBrewId, equipmentId, lockVersion, ...fields }): unknown => {
    return { sharedBrewId, equipmentId, lockVersion, ...partOf(fields) };
  })
  .pipe(participationChange);

export async function changePartAction(space: string, previous: Answer | null, form: FormData): Promise<Answer> {
  const run = formAction(partForm, async (input): Promise<void> => {
    const outcome = await changePart(await requireMember(space), input);
    if (!outcome.ok) throw new AppError("CONFLICT", STALE);
    revalidatePath(`/s/${space}`, "layout");
  });
  return run(previous, form);
}

export async function leaveAction(space: string, previous: Answer | null, form: FormData): Promise<Answer> {
  const run = formAction(leaving, async (input): Promise<void> => {
    const outcome = await leaveSharedBrew(await requireMember(space), input);
    if (!outcome.ok) throw new AppError("CONFLICT", STALE);
    redirect(`/s/${space}/shared-brews/${input.sharedBrewId}`);
  });
  return run(previous, form);
}

const place = { sharedBrewId: recordId, equipmentId: recordId };

/** Keeps a way out for this revision on this kettle. */
export async function takeWayAction(space: string, previous: Answer | null, form: FormData): Promise<Answer> {
  const run = formAction(z.strictObject({ ...place, way: z.string().max(80) }), async ({ way, ...ids }) => {
    const member = await requireMember(space);
    const { revision } = requireSheet(await findSheet(member, ids));
    const key = { recipeId: revision.id, rev: revision.rev };
    const kept = (await listAdaptations(member, key)).get(ids.equipmentId);
    const choice = { ...(kept?.choice ?? NO_CHOICE), way };
    const lockVersion = kept?.lockVersion ?? 0;
    const outcome = await saveAdaptation(member, { ...key, equipmentId: ids.equipmentId, lockVersion, choice });
    if (!outcome.ok) throw new AppError("CONFLICT", STALE);
    revalidatePath(`/s/${space}`, "layout");
  });
  return run(previous, form);
}

/** Plans the brew under the newest plan. It is computed here again: what the page showed is not taken from the browser. */
export async function planSheetAction(space: string, previous: Answer | null, form: FormData): Promise<Answer> {
  const run = formAction(z.strictObject(place), async (ids): Promise<void> => {
    const member = await requireMember(space);
    requireAbility(member, "brew");
    const sheet = requireSheet(await findSheet(member, ids));
    const { revision } = sheet;
    const { recipe } = requireFitting(sheet);
    const { ambient } = revision.content.writtenOn;
    const { id } = await planBrew(member, { ...ids, recipeId: revision.id, rev: revision.rev, recipe, ambient });
    redirect(`/s/${space}/brews/${id}`);
  });
  return run(previous, form);
}

function requireSheet(sheet: KettleSheet | null): KettleSheet {
  if (sheet === null) throw new AppError("NOT_FOUND", "There is no such shared brew or kettle here.");
  return sheet;
}

function requireFitting({ adapted }: KettleSheet): NonNullable<KettleSheet["adapted"]["chosen"]> {
  if (adapted.chosen === null) {
    throw new AppError("INVALID", "The recipe does not fit this kettle: take one of the ways out first.");
  }
  return adapted.chosen;
}
