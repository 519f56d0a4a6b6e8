import "server-only";
import type { BrewDrop } from "@/lib/model/brew-input";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { returnLots } from "../lots/give-back";
import type { Member } from "../session";
import { mayWriteBrew } from "./may-write";

/**
 * Drops a brew that is only planned: it keeps what was written, counts nowhere, and what it took from its lots is on the shelf
 * again. Where readings were written already, somebody has to say why.
 */
export function dropBrew(member: Member, { id, lockVersion, why }: BrewDrop): Promise<void> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    const brew = await tx.brew.findUnique({
      where: { spaceId_id: { spaceId, id } },
      select: {
        ...{ state: true, droppedAt: true, brewerUserId: true, collaborators: { select: { userId: true } } },
        _count: { select: { events: true } },
      },
    });
    if (brew === null) throw new AppError("NOT_FOUND", "There is no such brew here.");
    if (!mayWriteBrew(member, brew)) {
      throw new AppError("FORBIDDEN", "Only who brews this, their helpers and organisers drop it.");
    }
    if (brew.droppedAt !== null) throw new AppError("CONFLICT", "This brew was dropped already.");
    if (brew.state !== "planned") {
      throw new AppError("CONFLICT", `The brew is ${brew.state}; only what is planned can be dropped.`);
    }
    const readings = brew._count.events;
    if (readings > 0 && why === "") {
      const many = readings === 1 ? "a reading" : `${String(readings)} readings`;
      throw new AppError("INVALID", `Reason is empty: this brew has ${many}, so say why it is dropped.`);
    }
    // Before the brew is dropped, which nothing changes afterwards.
    await returnLots(tx, member, id);
    const { count } = await tx.brew.updateMany({
      where: { spaceId, id, lockVersion, state: "planned", droppedAt: null },
      data: { droppedAt: new Date(), droppedBy: userId, droppedWhy: why, lockVersion: { increment: 1 } },
    });
    // Thrown, so that the lots are not put back by whoever was too late.
    if (count !== 1)
      throw new AppError("CONFLICT", "Somebody changed this brew since the page was opened; load it again.");
  });
}
