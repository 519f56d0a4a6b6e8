import "server-only";
import type { FermentableStock, HopStock } from "@/lib/calc/adapt";
import { fraction, type Fraction } from "@/lib/calc/units";
import { genericLoss, genericNamed } from "@/lib/model/generic-ingredients";
import { kindAndFigures, type KindAndFigures } from "@/lib/model/ingredient";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import { lotKindAndFigures, type LotKindAndFigures } from "@/lib/model/ingredient-lot";
import { nameKey, type LotFigures } from "@/lib/model/lot";
import { dayOf, lotToday } from "@/lib/model/lot-today";
import { inSpace, type SpaceTransaction } from "../db";
import type { Member } from "../session";

/** What is usual of an ingredient by its kind and name; null where neither the club nor the lists know it. */
export type UsualOf = (kind: IngredientKind, name: string) => KindAndFigures | null;

/** What a variety of hops loses in six months, by its name; null where neither the club nor the lists know. */
export type LossOf = (name: string) => Fraction | null;

/** The club's own word on an ingredient comes before the generic list. */
async function usualsIn(tx: SpaceTransaction, spaceId: string): Promise<UsualOf> {
  const rows = await tx.ingredient.findMany({
    where: { spaceId, archivedAt: null },
    select: { kind: true, name: true, figures: true },
  });
  const keyOf = (kind: string, name: string): string => `${kind} ${nameKey(name)}`;
  const own = new Map(
    rows.map(({ kind, name, figures }) => [keyOf(kind, name), kindAndFigures.parse({ kind, figures })]),
  );
  return (kind, name) => own.get(keyOf(kind, name)) ?? genericNamed(kind, name)?.what ?? null;
}

function lossBy(usualOf: UsualOf): LossOf {
  return (name) => {
    const usual = usualOf("hop", name);
    return (usual?.kind === "hop" ? usual.figures.lossIn6Months : null) ?? genericLoss(name);
  };
}

export function listLosses({ spaceId, userId }: Member): Promise<LossOf> {
  return inSpace(spaceId, userId, async (tx) => lossBy(await usualsIn(tx, spaceId)));
}

/**
 * Lots as a recipe has them today: hops with what storage has left of their alpha acids. A lot that is put away or not of
 * this space is missing.
 */
export function lotFigures(
  { spaceId, userId }: Member,
  ids: readonly string[],
): Promise<ReadonlyMap<string, LotFigures>> {
  if (ids.length === 0) return Promise.resolve(new Map());
  return inSpace(spaceId, userId, (tx) => figuresIn(tx, spaceId, ids));
}

/** The same within a transaction. */
export async function figuresIn(
  tx: SpaceTransaction,
  spaceId: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, LotFigures>> {
  const rows = await tx.ingredientLot.findMany({
    where: { spaceId, id: { in: [...new Set(ids)] }, archivedAt: null },
    select: { id: true, kind: true, name: true, figures: true },
  });
  const usualOf = await usualsIn(tx, spaceId);
  return new Map(
    rows.map(({ id, kind, name, figures }) => [id, todayOf(lotKindAndFigures.parse({ kind, figures }), name, usualOf)]),
  );
}

/** One lot as a recipe of today has it. */
function todayOf(what: LotKindAndFigures, name: string, usualOf: UsualOf): LotFigures {
  const lot = lotToday(what, lossBy(usualOf)(name), dayOf(new Date()));
  const usual = usualOf(what.kind, name);
  if (usual === null) return lot;
  if (lot.kind === "hop" && usual.kind === "hop") return { ...lot, stock: hopStock(name, usual.figures) };
  if (lot.kind === "fermentable" && usual.kind === "fermentable") {
    const stock: FermentableStock = { name, ...usual.figures };
    return { ...lot, stock };
  }
  return lot;
}

type HopFigures = Extract<KindAndFigures, { readonly kind: "hop" }>["figures"];

/** The middle of the variety's range, as a recipe takes it that only names the hop. */
function hopStock(name: string, { alphaLow, alphaHigh }: HopFigures): HopStock {
  return { name, alpha: fraction((alphaLow + alphaHigh) / 2) };
}
