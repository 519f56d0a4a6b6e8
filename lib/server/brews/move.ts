import "server-only";
import type { BrewMove } from "@/lib/model/brew-input";
import { BREW_STATES } from "@/lib/model/brew";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import type { Member } from "../session";
import { mayWriteBrew } from "./may-write";
import { storedWord } from "../stored-word";

export type MoveOutcome =
  { readonly ok: true; readonly lockVersion: number } | { readonly ok: false; readonly reason: "stale" };

/** Moves a brew on, or one state back when somebody tapped too early. */
export function moveBrew(member: Member, { id, state, lockVersion }: BrewMove): Promise<MoveOutcome> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx): Promise<MoveOutcome> => {
    const brew = await tx.brew.findUnique({
      where: { spaceId_id: { spaceId, id } },
      select: {
        state: true,
        startedAt: true,
        droppedAt: true,
        brewerUserId: true,
        collaborators: { select: { userId: true } },
      },
    });
    if (brew === null) throw new AppError("NOT_FOUND", "There is no such brew here.");
    if (!mayWriteBrew(member, brew)) {
      throw new AppError("FORBIDDEN", "Only who brews this, their helpers and organisers move it on.");
    }
    if (brew.droppedAt !== null) throw new AppError("CONFLICT", "This brew was dropped; plan it anew to brew it.");
    const present = storedWord(BREW_STATES, brew.state);
    const steps = BREW_STATES.indexOf(state) - BREW_STATES.indexOf(present);
    if (steps === 0 || steps < -1) {
      throw new AppError("INVALID", `A brew that is ${present} does not become ${state}.`);
    }
    const now = new Date();
    // The version in the condition makes the second of two people change no row.
    const { count } = await tx.brew.updateMany({
      where: { spaceId, id, lockVersion },
      data: {
        state,
        startedAt: state === "planned" ? null : (brew.startedAt ?? now),
        closedAt: state === "closed" ? now : null,
        lockVersion: { increment: 1 },
      },
    });
    return count === 1 ? { ok: true, lockVersion: lockVersion + 1 } : { ok: false, reason: "stale" };
  });
}
