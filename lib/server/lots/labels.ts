import "server-only";
import { inSpace } from "../db";
import type { Member } from "../session";

/** What the chosen lots of a sheet are called, by the paths of its rows; one that is not there is left out. */
export async function lotLabels(
  { spaceId, userId }: Member,
  lots: Readonly<Record<string, string>>,
): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(Object.values(lots))];
  if (ids.length === 0) return new Map();
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.ingredientLot.findMany({ where: { spaceId, id: { in: ids } }, select: { id: true, label: true } }),
  );
  const labels = new Map(rows.map(({ id, label }) => [id, label]));
  return new Map(
    Object.entries(lots).flatMap(([path, id]) => {
      const label = labels.get(id);
      return label === undefined ? [] : [[path, label] as const];
    }),
  );
}
