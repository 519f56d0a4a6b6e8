import "server-only";
import type { Participant, PlanVersion, SharedBrew, SharedBrewSummary } from "@/lib/model/shared-brew";
import { displayNames } from "../accounts/names";
import { BREW_COLUMNS, peopleOf, toBrew } from "../brews/from-row";
import { inSpace, type SpaceTransaction } from "../db";
import { eventsRead } from "../log/dense-logs";
import { EVENT_COLUMNS } from "../log/event-row";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import {
  PARTICIPANT_COLUMNS,
  PLAN_COLUMNS,
  SHARED_COLUMNS,
  toParticipant,
  toPlanVersion,
  toSharedBrewSummary,
} from "./from-row";

/** The shared brews of the space, the latest planned day first. */
export async function listSharedBrews({ spaceId, userId }: Member): Promise<readonly SharedBrewSummary[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrew.findMany({
      where: { spaceId },
      select: SHARED_COLUMNS,
      orderBy: [{ plannedAt: { sort: "desc", nulls: "first" } }, { id: "asc" }],
    }),
  );
  return rows.map(toSharedBrewSummary);
}

/** A shared brew with its present plan, who takes part, and everybody's sheet and readings. */
export async function findSharedBrew(member: Member, id: string): Promise<SharedBrew | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const found = await inSpace(spaceId, userId, async (tx) => {
    const head = await readHead(tx, spaceId, id);
    if (head === null) return null;
    const those = { spaceId, sharedBrewId: id, droppedAt: null };
    const ids = (await tx.brew.findMany({ where: those, select: { id: true } })).map((brew) => brew.id);
    const { where, leftOut } = await eventsRead(tx, spaceId, ids);
    const brews = await tx.brew.findMany({
      where: those,
      select: { ...BREW_COLUMNS, events: { select: EVENT_COLUMNS, where }, equipmentId: true, planVersion: true },
      orderBy: { id: "asc" },
    });
    return { ...head, brews: brews.map((brew) => ({ ...brew, leftOut: leftOut.get(brew.id) ?? 0 })) };
  });
  if (found === null) return null;
  const { shared, plan, participants, brews } = found;
  const nameOf = await displayNames({ spaceId, userId }, [
    ...peopleOf(brews),
    ...participants.map((row) => row.userId),
    plan.madeBy,
  ]);
  return {
    ...toSharedBrewSummary(shared),
    plan: toPlanVersion(plan, nameOf),
    participants: participants.map((row) => toParticipant(row, brewOf(row, brews), nameOf)),
    brews: brews.map((row) => toBrew(member, row, nameOf)),
  };
}

/** The same without the logs: what the sheets, a calendar and the plan itself need. */
export type SharedBrewPlan = SharedBrewSummary & Pick<SharedBrew, "plan" | "participants">;

export async function findSharedBrewPlan(
  { spaceId, userId }: Pick<Member, "spaceId" | "userId">,
  id: string,
): Promise<SharedBrewPlan | null> {
  if (!isRecordId(id)) return null;
  const found = await inSpace(spaceId, userId, async (tx) => {
    const head = await readHead(tx, spaceId, id);
    if (head === null) return null;
    const brews = await tx.brew.findMany({
      where: { spaceId, sharedBrewId: id, droppedAt: null },
      select: { id: true, state: true, planVersion: true, brewerUserId: true, equipmentId: true },
    });
    return { ...head, brews };
  });
  if (found === null) return null;
  const { shared, plan, participants, brews } = found;
  const nameOf = await displayNames({ spaceId, userId }, [...participants.map((row) => row.userId), plan.madeBy]);
  return {
    ...toSharedBrewSummary(shared),
    plan: toPlanVersion(plan, nameOf),
    participants: participants.map((row) => toParticipant(row, brewOf(row, brews), nameOf)),
  };
}

/** Every version of a plan, the newest first. */
export async function listPlanVersions({ spaceId, userId }: Member, id: string): Promise<readonly PlanVersion[]> {
  if (!isRecordId(id)) return [];
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrewPlan.findMany({
      where: { spaceId, sharedBrewId: id },
      select: PLAN_COLUMNS,
      orderBy: { version: "desc" },
    }),
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.madeBy),
  );
  return rows.map((row) => toPlanVersion(row, nameOf));
}

async function readHead(tx: SpaceTransaction, spaceId: string, id: string) {
  const shared = await tx.sharedBrew.findUnique({ where: { spaceId_id: { spaceId, id } }, select: SHARED_COLUMNS });
  if (shared === null) return null;
  const plan = await tx.sharedBrewPlan.findUniqueOrThrow({
    where: {
      spaceId_sharedBrewId_version: { spaceId, sharedBrewId: id, version: shared.lockVersion },
    },
    select: PLAN_COLUMNS,
  });
  const participants = await tx.sharedBrewParticipant.findMany({
    where: { spaceId, sharedBrewId: id, leftAt: null },
    select: PARTICIPANT_COLUMNS,
    orderBy: [{ joinedAt: "asc" }, { equipmentId: "asc" }],
  });
  return { shared, plan, participants };
}

function brewOf<B extends { readonly brewerUserId: string; readonly equipmentId: string }>(
  { userId, equipmentId }: Pick<Participant, "userId" | "equipmentId">,
  brews: readonly B[],
): B | undefined {
  return brews.find((brew) => brew.brewerUserId === userId && brew.equipmentId === equipmentId);
}
