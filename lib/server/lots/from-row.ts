import "server-only";
import { lotKindAndFigures, type IngredientLot } from "@/lib/model/ingredient-lot";
import type { Price } from "@/lib/model/price";
import { dayOf } from "@/lib/model/lot-today";
import type { SpaceTransaction } from "../db";
import type { Member } from "../session";
import { mayChangeLot } from "./may-change";

export type LotRow = Awaited<ReturnType<SpaceTransaction["ingredientLot"]["findUniqueOrThrow"]>>;

export function toLot(member: Member, row: LotRow, nameOf: (userId: string) => string): IngredientLot {
  const { ownerUserId } = row;
  return {
    id: row.id,
    owner: ownerUserId === null ? null : { id: ownerUserId, name: nameOf(ownerUserId) },
    name: row.name,
    label: row.label,
    what: lotKindAndFigures.parse({ kind: row.kind, figures: row.figures }),
    onHand: row.onHand.toNumber(),
    unit: row.unit,
    bestBefore: row.bestBefore === null ? null : dayOf(row.bestBefore),
    price: toPrice(row),
    notes: row.notes,
    lockVersion: row.lockVersion,
    isArchived: row.archivedAt !== null,
    mayWrite: mayChangeLot(member, ownerUserId),
  };
}

function toPrice({ priceMinor, priceFor, currency }: LotRow): Price | null {
  if (priceMinor === null || priceFor === null || currency === null) return null;
  return { minor: Number(priceMinor), currency, for: priceFor.toNumber() };
}
