"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { wayName } from "@/lib/model/adaptation";
import { revisionNumber } from "@/lib/model/measured";
import { oneOf, recordId } from "@/lib/model/written";
import { formAction } from "@/lib/server/action";
import { AppError } from "@/lib/server/app-error";
import { planBrew } from "@/lib/server/brews/plan";
import { requireAbility } from "@/lib/server/permissions";
import { requireMember } from "@/lib/server/session";
import { readSheet, type Sheet } from "./read-sheet";

const planned = z.strictObject({
  space: z.string(),
  recipeId: recordId,
  equipmentId: recordId,
  rev: revisionNumber,
  volume: oneOf("Volume", ["chosen", "usual", "written"]),
  /** Empty for what the sheet itself shows: a recipe that fits, or the way out that was chosen. */
  way: z.string().max(80),
});

/** Plans a brew. The recipe is adapted here again: what the page showed is not taken from the browser. */
export const planBrewAction = formAction(planned, async ({ space, way, ...request }) => {
  const member = await requireMember(space);
  requireAbility(member, "brew");
  const sheet = await readSheet(member, request);
  if (sheet === null) throw new AppError("NOT_FOUND", "There is no such recipe or kettle here.");
  const { id } = await planBrew(member, {
    recipeId: request.recipeId,
    rev: sheet.revision.rev,
    equipmentId: request.equipmentId,
    sharedBrewId: null,
    recipe: recipeOf(sheet, way),
    ambient: sheet.revision.content.writtenOn.ambient,
    lots: sheet.choice.lots,
  });
  redirect(`/s/${member.spaceSlug}/brews/${id}`);
});

function recipeOf({ outcome, chosen }: Sheet, way: string) {
  if (way === "" && chosen !== null) return chosen.recipe;
  const asked = outcome.ok ? undefined : outcome.waysOut.find((each) => wayName(each) === way);
  if (asked === undefined) {
    throw new AppError("CONFLICT", "The kettle has changed since this page was opened: look at the sheet again.");
  }
  return asked.recipe;
}
