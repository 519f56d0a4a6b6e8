import "server-only";
import { planDifferences } from "@/lib/model/plan-difference";
import type { Plan, PlanChange, PlanOutcome } from "@/lib/model/shared-brew";
import { AppError } from "../app-error";
import { inSpace, isUniqueViolation, type SpaceTransaction } from "../db";
import { tell } from "../notices/writes";
import { requireAbility } from "../permissions";
import { LostRace } from "../save-race";
import type { Member } from "../session";
import { PLAN_COLUMNS, toPlanVersion } from "./from-row";
import { headOf, requireRevision, writePlanVersion } from "./writes";

/**
 * Makes another version of the plan and tells everybody who takes part. A brew that is planned already stays as it is,
 * and keeps the version that it was planned under. Of two organisers at once, the second is told.
 */
export async function changePlan(member: Member, change: PlanChange): Promise<PlanOutcome> {
  requireAbility(member, "organise");
  try {
    return await inSpace(member.spaceId, member.userId, (tx) => write(tx, member, change));
  } catch (error) {
    if (!isUniqueViolation(error) && !(error instanceof LostRace)) throw error;
    return { ok: false, reason: "stale", version: await presentVersion(member, change.id) };
  }
}

async function write(tx: SpaceTransaction, member: Member, change: PlanChange): Promise<PlanOutcome> {
  const { spaceId } = member;
  const { id, baseVersion, note } = change;
  const shared = await tx.sharedBrew.findUnique({
    where: { spaceId_id: { spaceId, id } },
    select: { title: true, recipeId: true, lockVersion: true },
  });
  if (shared === null) throw new AppError("NOT_FOUND", "There is no such shared brew here.");
  if (shared.lockVersion !== baseVersion) return { ok: false, reason: "stale", version: shared.lockVersion };
  const { recipeId, title } = shared;
  const plan: Plan = { recipeRev: change.rev, state: change.state, window: change.window, rules: change.rules };
  if (planDifferences(await readPlan(tx, spaceId, id, baseVersion), plan).length === 0) {
    return { ok: false, reason: "unchanged" };
  }
  await requireRevision(tx, spaceId, { recipeId, rev: change.rev });

  const version = baseVersion + 1;
  const { count } = await tx.sharedBrew.updateMany({
    where: { spaceId, id, lockVersion: baseVersion },
    data: { ...headOf(plan), lockVersion: version },
  });
  if (count === 0) throw new LostRace();
  await writePlanVersion(tx, member, { id, recipeId, version, plan, note });
  await tellParticipants(tx, member, { sharedBrewId: id, title, version, note });
  return { ok: true, version };
}

async function readPlan(tx: SpaceTransaction, spaceId: string, id: string, version: number): Promise<Plan> {
  const row = await tx.sharedBrewPlan.findUniqueOrThrow({
    where: { spaceId_sharedBrewId_version: { spaceId, sharedBrewId: id, version } },
    select: PLAN_COLUMNS,
  });
  return toPlanVersion(row, () => "");
}

/** Whoever made the change has seen it, and is told nothing. */
async function tellParticipants(
  tx: SpaceTransaction,
  member: Member,
  about: { readonly sharedBrewId: string; readonly title: string; readonly version: number; readonly note: string },
): Promise<void> {
  const { spaceId, userId } = member;
  const here = { spaceId, sharedBrewId: about.sharedBrewId, leftAt: null };
  await tx.sharedBrewParticipant.updateMany({ where: { ...here, userId }, data: { seenVersion: about.version } });
  const others = await tx.sharedBrewParticipant.findMany({
    where: { ...here, userId: { not: userId } },
    select: { userId: true },
  });
  const userIds = others.map((row) => row.userId);
  await tell(tx, member, userIds, { kind: "plan changed", payload: { ...about, kettle: "" } });
}

async function presentVersion({ spaceId, userId }: Member, id: string): Promise<number> {
  const shared = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrew.findUniqueOrThrow({ where: { spaceId_id: { spaceId, id } }, select: { lockVersion: true } }),
  );
  return shared.lockVersion;
}
