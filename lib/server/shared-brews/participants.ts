import "server-only";
import type { Joining, Leaving, ParticipationChange, PartOutcome } from "@/lib/model/participation";
import { isOpen, type PlanSeen } from "@/lib/model/shared-brew";
import { instantOf, type ZonedTime } from "@/lib/model/zoned-time";
import { AppError } from "../app-error";
import { inSpace, isUniqueViolation, JSON_NULL, toJson, type SpaceTransaction } from "../db";
import { mayChangeEquipment } from "../equipment/may-change";
import { tell } from "../notices/writes";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { requirePlan, type OpenPlan } from "./require-plan";

/** Joins with one's own kettle; an organiser enters anybody's, and its owner is told. */
export async function joinSharedBrew(member: Member, input: Joining): Promise<void> {
  requireAbility(member, "brew");
  const { spaceId, userId } = member;
  const { sharedBrewId, equipmentId } = input;
  try {
    await inSpace(spaceId, userId, async (tx) => {
      const plan = await requirePlan(tx, spaceId, sharedBrewId);
      if (!isOpen(plan.state)) throw new AppError("CONFLICT", `The shared brew is ${plan.state}.`);
      if (plan.version !== input.planVersion) {
        throw new AppError("CONFLICT", `The plan has changed to version ${String(plan.version)}: look at it again.`);
      }
      const kettle = await requireKettle(tx, member, equipmentId);
      const part = { ...chosen(input, plan), joinedBy: userId, seenVersion: plan.version };
      await enter(tx, { spaceId, sharedBrewId, userId: kettle.ownerUserId, equipmentId }, part);
      if (kettle.ownerUserId !== userId) await tellOwner(tx, member, plan, kettle, "entered");
    });
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
    throw new AppError("CONFLICT", "This kettle takes part already.", { cause: error });
  }
}

/** Changes one's day, water or yeast, unless somebody did since the page was opened. */
export async function changePart(member: Member, input: ParticipationChange): Promise<PartOutcome> {
  requireAbility(member, "brew");
  const { spaceId, userId } = member;
  const { sharedBrewId, equipmentId, lockVersion } = input;
  return inSpace(spaceId, userId, async (tx) => {
    const plan = await requirePlan(tx, spaceId, sharedBrewId);
    await requireKettle(tx, member, equipmentId);
    return update(tx, { spaceId, sharedBrewId, equipmentId, lockVersion }, chosen(input, plan));
  });
}

/** Leaves; the line stays, so that the calendar can say that the day is off. */
export async function leaveSharedBrew(member: Member, input: Leaving): Promise<PartOutcome> {
  requireAbility(member, "brew");
  const { spaceId, userId } = member;
  const { sharedBrewId, equipmentId, lockVersion } = input;
  return inSpace(spaceId, userId, async (tx) => {
    const plan = await requirePlan(tx, spaceId, sharedBrewId);
    const kettle = await requireKettle(tx, member, equipmentId);
    const brewing = await tx.brew.count({ where: { spaceId, sharedBrewId, equipmentId, droppedAt: null } });
    if (brewing > 0) throw new AppError("CONFLICT", "A brew is planned on this kettle, and stays in the shared brew.");
    const where = { spaceId, sharedBrewId, equipmentId, lockVersion };
    const outcome = await update(tx, where, { leftAt: new Date() });
    if (outcome.ok && kettle.ownerUserId !== userId) await tellOwner(tx, member, plan, kettle, "taken out");
    return outcome;
  });
}

/** Notes that the member has read a version of the plan; it never goes back. */
export async function markPlanSeen({ spaceId, userId }: Member, { id, version }: PlanSeen): Promise<void> {
  await inSpace(spaceId, userId, async (tx) => {
    const plan = await requirePlan(tx, spaceId, id);
    await tx.sharedBrewParticipant.updateMany({
      where: { spaceId, sharedBrewId: id, userId, seenVersion: { lt: Math.min(version, plan.version) } },
      data: { seenVersion: Math.min(version, plan.version) },
    });
  });
}

interface Kettle {
  readonly ownerUserId: string;
  readonly name: string;
}

async function requireKettle(tx: SpaceTransaction, member: Member, id: string): Promise<Kettle> {
  const { spaceId } = member;
  const kettle = await tx.equipment.findUnique({
    where: { spaceId_id: { spaceId, id }, archivedAt: null },
    select: { ownerUserId: true, name: true },
  });
  if (kettle === null) throw new AppError("NOT_FOUND", "There is no such equipment here.");
  if (!mayChangeEquipment(member, kettle.ownerUserId)) {
    throw new AppError("FORBIDDEN", "Only the owner of this kettle or an organiser takes part with it.");
  }
  return kettle;
}

function chosen({ brewDay, water, yeast }: Pick<Joining, "brewDay" | "water" | "yeast">, plan: OpenPlan) {
  if (brewDay !== null) requireWithin(brewDay, plan);
  return {
    brewAt: brewDay === null ? null : instantOf(brewDay),
    zone: brewDay === null ? null : brewDay.zone,
    water: water === null ? JSON_NULL : toJson(water),
    yeast,
  };
}

function requireWithin({ day }: ZonedTime, { window }: OpenPlan): void {
  if (window === null || (day >= window.from && day <= window.to)) return;
  throw new AppError("INVALID", `Brew day ${day} is outside the days of the plan, ${window.from} to ${window.to}.`);
}

interface PartKey {
  readonly spaceId: string;
  readonly sharedBrewId: string;
  readonly equipmentId: string;
}

type Part = ReturnType<typeof chosen> & { readonly joinedBy: string; readonly seenVersion: number };

/** A new line, or that of somebody who had left. */
async function enter(tx: SpaceTransaction, key: PartKey & { readonly userId: string }, part: Part): Promise<void> {
  const back = await tx.sharedBrewParticipant.updateMany({
    where: { ...key, leftAt: { not: null } },
    data: { ...part, leftAt: null, lockVersion: { increment: 1 } },
  });
  if (back.count === 0) await tx.sharedBrewParticipant.create({ data: { ...key, ...part } });
}

async function update(
  tx: SpaceTransaction,
  { lockVersion, ...key }: PartKey & { readonly lockVersion: number },
  data: Partial<ReturnType<typeof chosen>> & { readonly leftAt?: Date },
): Promise<PartOutcome> {
  const { count } = await tx.sharedBrewParticipant.updateMany({
    where: { ...key, lockVersion, leftAt: null },
    data: { ...data, lockVersion: { increment: 1 } },
  });
  if (count === 1) return { ok: true, lockVersion: lockVersion + 1 };
  const present = await tx.sharedBrewParticipant.count({ where: { ...key, leftAt: null } });
  if (present === 0) throw new AppError("NOT_FOUND", "This kettle does not take part.");
  return { ok: false, reason: "stale" };
}

async function tellOwner(
  tx: SpaceTransaction,
  member: Member,
  { id, title, version }: OpenPlan,
  { ownerUserId, name }: Kettle,
  kind: "entered" | "taken out",
): Promise<void> {
  const payload = { sharedBrewId: id, title, version, note: "", kettle: name };
  await tell(tx, member, [ownerUserId], { kind, payload });
}
