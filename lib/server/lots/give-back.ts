import "server-only";
import { toThousandth } from "@/lib/model/lot-need";
import { AppError } from "../app-error";
import { mayWriteBrew } from "../brews/may-write";
import { inSpace, type SpaceTransaction } from "../db";
import type { Member } from "../session";
import { lockLots } from "./lock";

/**
 * Puts back what a planned brew took from its lots; once, whoever asks again. A brew that has begun keeps what it took:
 * it is in the kettle.
 */
export function giveBackLots(member: Member, brewId: string): Promise<{ readonly lots: number }> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    await requirePlanned(tx, member, brewId);
    return returnLots(tx, member, brewId);
  });
}

/** The same within a larger piece of work, which has proved who may. */
export async function returnLots(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  brewId: string,
): Promise<{ readonly lots: number }> {
  const now = new Date();
  const taken = await tx.brewLot.findMany({ where: { spaceId, brewId, returnedAt: null } });
  const locked = await lockLots(
    tx,
    spaceId,
    taken.map(({ lotId }) => lotId),
  );
  // Whoever was second finds none left to mark, having waited for the lots.
  const { count } = await tx.brewLot.updateMany({
    where: { spaceId, brewId, returnedAt: null },
    data: { returnedAt: now },
  });
  if (count !== taken.length) throw new AppError("CONFLICT", "Somebody put the lots back at the same moment.");
  for (const lot of locked.values()) {
    const back = toThousandth(taken.reduce((sum, row) => (row.lotId === lot.id ? sum + row.taken.toNumber() : sum), 0));
    if (back === 0) continue;
    const after = toThousandth(lot.onHand + back);
    const version = lot.lockVersion + 1;
    await tx.ingredientLot.updateMany({
      where: { spaceId, id: lot.id },
      data: { onHand: after, lockVersion: version },
    });
    await tx.ingredientLotMovement.create({
      data: { spaceId, lotId: lot.id, version, kind: "returned", change: back, after, brewId, actorId: userId },
    });
  }
  return { lots: locked.size };
}

async function requirePlanned(tx: SpaceTransaction, member: Member, brewId: string): Promise<void> {
  const brew = await tx.brew.findUnique({
    where: { spaceId_id: { spaceId: member.spaceId, id: brewId } },
    select: { state: true, brewerUserId: true, collaborators: { select: { userId: true } } },
  });
  if (brew === null) throw new AppError("NOT_FOUND", "There is no such brew here.");
  if (!mayWriteBrew(member, brew)) {
    throw new AppError("FORBIDDEN", "Only who brews this, their helpers and organisers put its lots back.");
  }
  if (brew.state !== "planned") {
    throw new AppError("CONFLICT", `The brew is ${brew.state}: what it took from its lots is in it.`);
  }
}
