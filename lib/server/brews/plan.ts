import "server-only";
import { randomUUID } from "node:crypto";
import type { Equipment } from "@/lib/calc/ledger";
import type { NewBrew } from "@/lib/model/brew-input";
import { equipmentInput } from "@/lib/model/equipment";
import { isOpen } from "@/lib/model/shared-brew";
import { AppError } from "../app-error";
import { CALC_VERSION } from "../calc-version";
import { inSpace, isUniqueViolation, toJson, type SpaceTransaction } from "../db";
import { mayChangeEquipment } from "../equipment/may-change";
import { takeLots } from "../lots/take";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { requirePlan } from "../shared-brews/require-plan";
import { planDay } from "./plan-day";

/**
 * Plans a brew of one revision on one kettle; the owner of the kettle brews it. The ledger and the run sheet are
 * computed here from the recipe as it was adapted: figures from a browser are not taken.
 */
export async function planBrew(member: Member, input: NewBrew): Promise<{ readonly id: string }> {
  requireAbility(member, "brew");
  try {
    return await inSpace(member.spaceId, member.userId, (tx) => insertBrew(tx, member, input));
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
    throw new AppError("CONFLICT", "This kettle has a sheet in this shared brew already.", {
      cause: error,
    });
  }
}

async function insertBrew(tx: SpaceTransaction, member: Member, input: NewBrew): Promise<{ readonly id: string }> {
  const { recipeId, rev, sharedBrewId, recipe, ambient } = input;
  const { spaceId } = member;
  const revision = await tx.recipeRevision.findUnique({
    where: { spaceId_recipeId_rev: { spaceId, recipeId, rev } },
    select: { recipe: { select: { title: true, rootId: true } } },
  });
  if (revision === null) throw new AppError("NOT_FOUND", "There is no such recipe here.");
  const kettle = await requireKettle(tx, member, input.equipmentId);
  const planVersion = sharedBrewId === null ? null : await joinPlan(tx, member, input, { sharedBrewId, ...kettle });

  const { equipment } = kettle;
  const { steps, predicted, cells } = planDay({ recipe, equipment, ambient });
  const id = randomUUID();
  await tx.brew.create({
    data: {
      spaceId,
      id,
      title: revision.recipe.title,
      sharedBrewId,
      planVersion,
      recipeId,
      recipeRev: rev,
      recipeRoot: revision.recipe.rootId,
      brewerUserId: kettle.ownerUserId,
      targetVolumeL: recipe.intoFermenter,
      equipmentSnapshot: toJson(equipment),
      equipmentId: input.equipmentId,
      equipmentRev: kettle.rev,
      recipe: toJson(recipe),
      ambient: toJson(ambient),
      runSheet: toJson(steps),
      predicted: toJson(predicted),
      calcVersion: CALC_VERSION,
    },
  });
  const { ownerUserId: brewerUserId } = kettle;
  const lots = input.lots ?? {};
  await takeLots(tx, { spaceId, actorId: member.userId, brewId: id, brewerUserId, recipe, cells, lots });
  return { id };
}

interface OwnedKettle {
  readonly ownerUserId: string;
  readonly rev: number;
  readonly equipment: Equipment;
}

async function requireKettle(tx: SpaceTransaction, member: Member, id: string): Promise<OwnedKettle> {
  const { spaceId } = member;
  const head = await tx.equipment.findUnique({
    where: { spaceId_id: { spaceId, id } },
    select: { ownerUserId: true, headRev: true },
  });
  if (head === null) throw new AppError("NOT_FOUND", "There is no such equipment here.");
  if (!mayChangeEquipment(member, head.ownerUserId)) {
    throw new AppError("FORBIDDEN", "Only the owner of this kettle or an organiser plans a brew on it.");
  }
  const { figures } = await tx.equipmentRevision.findUniqueOrThrow({
    where: { spaceId_equipmentId_rev: { spaceId, equipmentId: id, rev: head.headRev } },
    select: { figures: true },
  });
  return { ownerUserId: head.ownerUserId, rev: head.headRev, equipment: equipmentInput.parse(figures) };
}

/** Whoever plans a brew of a shared brew takes part in it. The answer is the version of the plan that it is under. */
async function joinPlan(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  { recipeId, rev, equipmentId }: NewBrew,
  { sharedBrewId, ownerUserId }: { readonly sharedBrewId: string; readonly ownerUserId: string },
): Promise<number> {
  const plan = await requirePlan(tx, spaceId, sharedBrewId);
  if (plan.recipeId !== recipeId || plan.recipeRev !== rev) {
    throw new AppError("INVALID", "The shared brew is of another recipe or revision.");
  }
  if (!isOpen(plan.state)) throw new AppError("CONFLICT", `The shared brew is ${plan.state}.`);
  const { version } = plan;
  await tx.sharedBrewParticipant.upsert({
    where: {
      spaceId_sharedBrewId_userId_equipmentId: { spaceId, sharedBrewId, userId: ownerUserId, equipmentId },
    },
    create: { spaceId, sharedBrewId, userId: ownerUserId, equipmentId, joinedBy: userId, seenVersion: version },
    update: { leftAt: null },
  });
  return version;
}
