import "server-only";
import { fermentableLotFigures, hopLotFigures, type LotFigures } from "@/lib/model/lot";
import { inSpace } from "../db";
import type { Member } from "../session";

/** Lots as far as they change a recipe, by their identifiers. */
export async function lotFiguresOf(
  { spaceId, userId }: Member,
  ids: readonly string[],
): Promise<ReadonlyMap<string, LotFigures>> {
  if (ids.length === 0) return new Map();
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.ingredientLot.findMany({
      where: { spaceId, id: { in: [...new Set(ids)] }, kind: { in: ["fermentable", "hop"] } },
      select: { id: true, kind: true, figures: true },
    }),
  );
  return new Map(rows.map(({ id, kind, figures }) => [id, lotOf(kind, figures)]));
}

// What is kept of a lot beside these figures is not the recipe's.
function lotOf(kind: string, figures: unknown): LotFigures {
  return kind === "hop"
    ? { kind: "hop", figures: hopLotFigures.strip().parse(figures) }
    : { kind: "fermentable", figures: fermentableLotFigures.strip().parse(figures) };
}
