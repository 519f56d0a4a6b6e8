import "server-only";
import type { Recipe } from "@/lib/calc/ledger";
import type { LotFigures } from "@/lib/model/lot";
import { rowNeeds, takeFromLots, toThousandth, type Pitching, type RowTake } from "@/lib/model/lot-need";
import { AppError } from "../app-error";
import { toJson, type SpaceTransaction } from "../db";
import { figuresIn } from "./figures";
import { lockLots, type LockedLot } from "./lock";

interface Taking {
  readonly spaceId: string;
  readonly actorId: string;
  readonly brewId: string;
  readonly brewerUserId: string;
  readonly recipe: Recipe;
  /** Cells that the wort needs, 10⁹; null where nobody knows. */
  readonly cells: number | null;
  /** The lot for a row, by the path of the row. */
  readonly lots: Readonly<Record<string, string>>;
}

/**
 * Takes what a new brew is made of from its lots, and keeps with the brew which lot it was, with its figures of the day.
 * Where a lot has too little, all of it is taken and the brew is short of the rest. The key of `brew_lot` lets it
 * happen once.
 */
export async function takeLots(tx: SpaceTransaction, taking: Taking): Promise<void> {
  const { spaceId, brewId, recipe, lots } = taking;
  const ids = Object.values(lots);
  if (ids.length === 0) return;
  const locked = await lockLots(tx, spaceId, ids);
  if (ids.some((id) => !locked.has(id))) throw new AppError("NOT_FOUND", "There is no such lot here.");
  const figures = await figuresIn(tx, spaceId, ids);
  const onHand = new Map([...locked.values()].map(({ id, onHand: there }) => [id, there]));
  const takes = takeFromLots(rowNeeds(recipe, pitchingOf(taking, figures)), lots, onHand);
  for (const take of takes) {
    const lot = requireUsable(locked, take, taking);
    await tx.brewLot.create({
      data: {
        spaceId,
        brewId,
        rowPath: take.path,
        lotId: take.lotId,
        label: lot.label,
        figures: toJson(figures.get(take.lotId)?.figures ?? {}),
        unit: take.unit,
        needed: take.amount,
        taken: take.taken,
      },
    });
  }
  for (const lot of locked.values()) await lower(tx, taking, lot, takes);
}

function pitchingOf({ cells, lots }: Taking, figures: ReadonlyMap<string, LotFigures>): Pitching {
  const yeast = figures.get(lots.yeast ?? "");
  return { cells, cellsInPack: yeast?.kind === "yeast" ? yeast.figures.cells : null };
}

function requireUsable(locked: ReadonlyMap<string, LockedLot>, take: RowTake, taking: Taking): LockedLot {
  const lot = locked.get(take.lotId);
  if (lot === undefined) throw new Error("a lot was taken from that was not locked");
  if (lot.isArchived) throw new AppError("CONFLICT", `The lot ${lot.label} has been put away.`);
  if (lot.kind !== take.kind) throw new AppError("INVALID", `The lot ${lot.label} is no ${take.kind}.`);
  const owners = [null, taking.brewerUserId, taking.actorId];
  if (!owners.includes(lot.ownerUserId)) {
    throw new AppError("FORBIDDEN", `The lot ${lot.label} belongs to another member.`);
  }
  return lot;
}

/** One movement a lot, however many rows it was for. */
async function lower(tx: SpaceTransaction, taking: Taking, lot: LockedLot, takes: readonly RowTake[]): Promise<void> {
  const { spaceId, actorId, brewId } = taking;
  const taken = toThousandth(takes.reduce((sum, take) => (take.lotId === lot.id ? sum + take.taken : sum), 0));
  if (taken === 0) return;
  const after = toThousandth(lot.onHand - taken);
  const version = lot.lockVersion + 1;
  await tx.ingredientLot.updateMany({
    where: { spaceId, id: lot.id },
    data: { onHand: after, lockVersion: version },
  });
  await tx.ingredientLotMovement.create({
    data: { spaceId, lotId: lot.id, version, kind: "used", change: -taken, after, brewId, actorId },
  });
}
