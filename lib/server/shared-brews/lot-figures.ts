import "server-only";
import { fermentableLotFigures, hopLotFigures, type LotFigures } from "@/lib/model/lot";
import { inSpace } from "../db";
import type { Member } from "../session";

/** The analyses of lots by their identifiers. */
export async function lotFigures(
  { spaceId, userId }: Member,
  ids: readonly string[],
): Promise<ReadonlyMap<string, LotFigures>> {
  if (ids.length === 0) return new Map();
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.ingredientLot.findMany({
      where: { spaceId, id: { in: [...new Set(ids)] } },
      select: { id: true, kind: true, figures: true },
    }),
  );
  return new Map(
    rows.flatMap(({ id, kind, figures }) => {
      const known = toFigures(kind, figures);
      return known === null ? [] : [[id, known] as const];
    }),
  );
}

function toFigures(kind: string, figures: unknown): LotFigures | null {
  if (kind === "fermentable") return { kind, figures: fermentableLotFigures.parse(figures) };
  if (kind === "hop") return { kind, figures: hopLotFigures.parse(figures) };
  return null;
}
