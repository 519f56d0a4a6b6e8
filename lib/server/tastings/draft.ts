import "server-only";
import type { DraftSeen } from "@/lib/model/tasting/prepare";
import { TASTING_STATE_WORDS, TASTING_STATES } from "@/lib/model/tasting/tasting";
import { AppError } from "../app-error";
import { inSpace, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

/**
 * Changes a draft as its steward, who alone does. The version in the condition makes the second of two windows change
 * nothing, and tells it so; what is written afterwards is in the same transaction.
 */
export async function inDraft<R>(
  member: Member,
  { id, lockVersion }: DraftSeen,
  work: (tx: SpaceTransaction) => Promise<R>,
): Promise<R> {
  requireAbility(member, "prepare tastings");
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    const { count } = await tx.tasting.updateMany({
      where: { spaceId, id, lockVersion, state: "draft", stewardId: userId },
      data: { lockVersion: { increment: 1 } },
    });
    if (count === 0) throw await refusal(tx, member, id);
    return work(tx);
  });
}

async function refusal(tx: SpaceTransaction, { spaceId, userId }: Member, id: string): Promise<AppError> {
  const tasting = await tx.tasting.findUnique({
    where: { spaceId_id: { spaceId, id } },
    select: { state: true, stewardId: true },
  });
  if (tasting === null) return new AppError("NOT_FOUND", "There is no such tasting here.");
  if (tasting.stewardId !== userId) return new AppError("FORBIDDEN", "Only the steward of a tasting prepares it.");
  if (tasting.state !== "draft") {
    const words = TASTING_STATE_WORDS[storedWord(TASTING_STATES, tasting.state)];
    return new AppError("CONFLICT", `The tasting is ${words}; what is tasted does not change any more.`);
  }
  return new AppError("CONFLICT", "The tasting was changed since this page was opened: load it again and look.");
}
