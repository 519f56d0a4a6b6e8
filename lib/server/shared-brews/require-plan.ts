import "server-only";
import type { DayWindow } from "@/lib/model/plain-day";
import type { SharedBrewState } from "@/lib/model/shared-brew";
import { AppError } from "../app-error";
import type { SpaceTransaction } from "../db";
import { SHARED_COLUMNS, toSharedBrewSummary } from "./from-row";

export interface OpenPlan {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly version: number;
  readonly state: SharedBrewState;
  readonly window: DayWindow | null;
}

/** The newest plan, which stays the newest until the transaction ends: who joins under it is told of the next. */
export async function requirePlan(tx: SpaceTransaction, spaceId: string, id: string): Promise<OpenPlan> {
  await tx.$queryRaw`SELECT FROM shared_brew WHERE space_id = ${spaceId}::uuid AND id = ${id}::uuid FOR SHARE`;
  const row = await tx.sharedBrew.findUnique({ where: { spaceId_id: { spaceId, id } }, select: SHARED_COLUMNS });
  if (row === null) throw new AppError("NOT_FOUND", "There is no such shared brew here.");
  return toSharedBrewSummary(row);
}
