import "server-only";
import type { PlanVersion } from "@/lib/model/shared-brew";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { PLAN_COLUMNS, toPlanVersion } from "./from-row";

/** A brew that was planned under an earlier version of the plan than there is now. */
export interface PlanBehind {
  readonly sharedBrewId: string;
  readonly equipmentId: string;
  readonly planned: PlanVersion;
  readonly present: PlanVersion;
}

/** null for a brew of its own, and for one under the newest version. */
export async function findPlanBehind({ spaceId, userId }: Member, brewId: string): Promise<PlanBehind | null> {
  if (!isRecordId(brewId)) return null;
  return inSpace(spaceId, userId, async (tx) => {
    const brew = await tx.brew.findUnique({
      where: { spaceId_id: { spaceId, id: brewId } },
      select: { sharedBrewId: true, planVersion: true, equipmentId: true },
    });
    if (brew === null || brew.sharedBrewId === null || brew.planVersion === null) return null;
    const { sharedBrewId, equipmentId, planVersion } = brew;
    const rows = await tx.sharedBrewPlan.findMany({
      where: { spaceId, sharedBrewId, version: { gte: planVersion } },
      select: PLAN_COLUMNS,
      orderBy: { version: "asc" },
    });
    const [planned, present] = [rows.at(0), rows.at(-1)].map((row) =>
      row === undefined ? undefined : toPlanVersion(row, () => ""),
    );
    if (planned === undefined || present === undefined || planned.version === present.version) return null;
    return { sharedBrewId, equipmentId, planned, present };
  });
}
