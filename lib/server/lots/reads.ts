import "server-only";
import { HAND_MOVEMENTS, type IngredientLot, type LotMovement } from "@/lib/model/ingredient-lot";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { toLot } from "./from-row";

/** Every lot of the space by ingredient and label, those put away too. */
export function listLots(member: Member): Promise<readonly IngredientLot[]> {
  return read(member, null);
}

export async function findLot(member: Member, id: string): Promise<IngredientLot | null> {
  if (!isRecordId(id)) return null;
  const [found] = await read(member, id);
  return found ?? null;
}

async function read(member: Member, id: string | null): Promise<readonly IngredientLot[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.ingredientLot.findMany({
      where: { spaceId, ...(id === null ? {} : { id }) },
      orderBy: [{ kind: "asc" }, { name: "asc" }, { label: "asc" }, { id: "asc" }],
    }),
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.flatMap((row) => row.ownerUserId ?? []),
  );
  return rows.map((row) => toLot(member, row, nameOf));
}

/** What came and went of a lot, the latest first; nothing where there is no such lot. */
export async function listMovements({ spaceId, userId }: Member, lotId: string): Promise<readonly LotMovement[]> {
  if (!isRecordId(lotId)) return [];
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.ingredientLotMovement.findMany({
      where: { spaceId, lotId },
      include: { brew: { select: { id: true, title: true } } },
      orderBy: { version: "desc" },
    }),
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.actorId),
  );
  return rows.map(({ version, kind, change, after, brew, why, actorId, at }) => ({
    version,
    kind: storedWord([...HAND_MOVEMENTS, "returned"], kind),
    change: change.toNumber(),
    after: after.toNumber(),
    brew,
    why,
    actorName: nameOf(actorId),
    at,
  }));
}
