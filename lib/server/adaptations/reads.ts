import "server-only";
import { adaptationChoice, type Adaptation } from "@/lib/model/adaptation";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

interface RevisionAsked {
  readonly recipeId: string;
  readonly rev: number;
}

/** What was chosen for a revision, by the kettle's identifier. */
export async function listAdaptations(
  { spaceId, userId }: Member,
  { recipeId, rev }: RevisionAsked,
): Promise<ReadonlyMap<string, Adaptation>> {
  if (!isRecordId(recipeId)) return new Map();
  const rows = await inSpace(spaceId, userId, (tx) => tx.adaptation.findMany({ where: { spaceId, recipeId, rev } }));
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.changedBy),
  );
  return new Map(
    rows.map(({ equipmentId, lockVersion, volume, way, lots, changedBy, changedAt }) => [
      equipmentId,
      {
        recipeId,
        rev,
        equipmentId,
        lockVersion,
        choice: adaptationChoice.parse({ volume, way, lots }),
        changedByName: nameOf(changedBy),
        changedAt,
      },
    ]),
  );
}
