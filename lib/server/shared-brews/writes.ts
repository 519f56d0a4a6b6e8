import "server-only";
import { randomUUID } from "node:crypto";
import { startOfDay } from "@/lib/model/plain-day";
import type { NewSharedBrew, Plan } from "@/lib/model/shared-brew";
import { AppError } from "../app-error";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";

/** Calls the club to brew one revision of a recipe, under the first version of a plan. */
export async function createSharedBrew(
  member: Member,
  { recipeId, rev, title, window, rules }: NewSharedBrew,
): Promise<{ readonly id: string }> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  const id = randomUUID();
  await inSpace(spaceId, userId, async (tx) => {
    await requireRevision(tx, spaceId, { recipeId, rev });
    const plan: Plan = { recipeRev: rev, state: "open", window, rules };
    await tx.sharedBrew.create({ data: { spaceId, id, recipeId, title, createdBy: userId, ...headOf(plan) } });
    await writePlanVersion(tx, member, { id, recipeId, version: 1, plan, note: "" });
  });
  return { id };
}

export async function requireRevision(
  tx: SpaceTransaction,
  spaceId: string,
  { recipeId, rev }: { readonly recipeId: string; readonly rev: number },
): Promise<void> {
  const revision = await tx.recipeRevision.findUnique({
    where: { spaceId_recipeId_rev: { spaceId, recipeId, rev } },
    select: { rev: true },
  });
  if (revision === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
}

/** What the shared brew itself repeats of its newest plan, for lists and for the keys of brews. */
export function headOf({ recipeRev, state, window }: Plan): Pick<Plan, "recipeRev" | "state"> & {
  readonly plannedAt: Date | null;
} {
  return { recipeRev, state, plannedAt: window === null ? null : startOfDay(window.from) };
}

export async function writePlanVersion(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  a: {
    readonly id: string;
    readonly recipeId: string;
    readonly version: number;
    readonly plan: Plan;
    readonly note: string;
  },
): Promise<void> {
  const { recipeRev, state, window, rules } = a.plan;
  await tx.sharedBrewPlan.create({
    data: {
      spaceId,
      sharedBrewId: a.id,
      version: a.version,
      recipeId: a.recipeId,
      recipeRev,
      state,
      windowFrom: window === null ? null : startOfDay(window.from),
      windowTo: window === null ? null : startOfDay(window.to),
      rules: toJson(rules),
      note: a.note,
      madeBy: userId,
    },
  });
}
