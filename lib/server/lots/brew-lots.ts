import "server-only";
import type { BrewLot } from "@/lib/model/brew-lot";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** The lots that a brew was planned with, in the order of its rows; none for a brew that is not there. */
export async function listBrewLots({ spaceId, userId }: Member, brewId: string): Promise<readonly BrewLot[]> {
  if (!isRecordId(brewId)) return [];
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brewLot.findMany({ where: { spaceId, brewId }, orderBy: { rowPath: "asc" } }),
  );
  return rows.map(({ rowPath, lotId, label, unit, needed, taken, returnedAt }) => ({
    path: rowPath,
    lotId,
    label,
    unit,
    needed: needed.toNumber(),
    taken: taken.toNumber(),
    isReturned: returnedAt !== null,
  }));
}
