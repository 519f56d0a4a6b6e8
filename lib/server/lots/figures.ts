import "server-only";
import type { Fraction } from "@/lib/calc/units";
import { genericLoss, nameKey } from "@/lib/model/generic-ingredients";
import { kindAndFigures } from "@/lib/model/ingredient";
import { lotKindAndFigures, type LotKindAndFigures } from "@/lib/model/ingredient-lot";
import type { LotFigures } from "@/lib/model/lot";
import { dayOf, lotToday } from "@/lib/model/lot-today";
import { inSpace, type SpaceTransaction } from "../db";
import type { Member } from "../session";

/** What a variety of hops loses in six months, by its name; null where neither the club nor the lists know. */
export type LossOf = (name: string) => Fraction | null;

/** The club's own word on a variety comes before the generic list. */
export async function lossesIn(tx: SpaceTransaction, spaceId: string): Promise<LossOf> {
  const rows = await tx.ingredient.findMany({
    where: { spaceId, kind: "hop", archivedAt: null },
    select: { kind: true, name: true, figures: true },
  });
  const own = new Map(
    rows.map(({ kind, name, figures }) => {
      const what = kindAndFigures.parse({ kind, figures });
      return [nameKey(name), what.kind === "hop" ? what.figures.lossIn6Months : null];
    }),
  );
  return (name) => own.get(nameKey(name)) ?? genericLoss(name);
}

export function listLosses({ spaceId, userId }: Member): Promise<LossOf> {
  return inSpace(spaceId, userId, (tx) => lossesIn(tx, spaceId));
}

/**
 * Lots as a recipe has them today: hops with what storage has left of their alpha acids. A lot that is put away, is not of
 * this space or changes no recipe is missing.
 */
export function lotFigures(
  { spaceId, userId }: Member,
  ids: readonly string[],
): Promise<ReadonlyMap<string, LotFigures>> {
  return inSpace(spaceId, userId, (tx) => figuresIn(tx, spaceId, ids));
}

/** The same within a transaction. */
export async function figuresIn(
  tx: SpaceTransaction,
  spaceId: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, LotFigures>> {
  if (ids.length === 0) return new Map();
  const rows = await tx.ingredientLot.findMany({
    where: { spaceId, id: { in: [...new Set(ids)] }, archivedAt: null },
    select: { id: true, kind: true, name: true, figures: true },
  });
  const lossOf = await lossesIn(tx, spaceId);
  const today = dayOf(new Date());
  return new Map(
    rows.flatMap(({ id, kind, name, figures }) => {
      const what: LotKindAndFigures = lotKindAndFigures.parse({ kind, figures });
      const asToday = lotToday(what, lossOf(name), today);
      return asToday === null ? [] : [[id, asToday] as const];
    }),
  );
}
