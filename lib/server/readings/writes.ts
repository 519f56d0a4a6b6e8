import "server-only";
import type { ReadingInput } from "@/lib/model/reading-input";
import { AppError } from "../app-error";
import { mayWriteBrew } from "../brews/may-write";
import { contentHash, sameBytes } from "../content-hash";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import type { Member } from "../session";
import { toEventValue, type EventPayload } from "./from-event";

/**
 * Adds a reading to the log of a brew. A phone may send the same reading many times: it is kept once, and every time
 * answered well. It is never overwritten.
 */
export function recordReading(member: Member, reading: ReadingInput): Promise<"stored" | "duplicate"> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    const brew = await tx.brew.findUnique({
      where: { spaceId_id: { spaceId, id: reading.brewId } },
      select: { brewerUserId: true, collaborators: { select: { userId: true } } },
    });
    if (brew === null) throw new AppError("NOT_FOUND", "There is no such brew here.");
    if (!mayWriteBrew(member, brew)) {
      throw new AppError("FORBIDDEN", "Only who brews this, their helpers and organisers write readings to it.");
    }
    const hash = contentHash({ ...reading, actorId: userId });
    const { count } = await tx.brewEvent.createMany({
      data: [{ ...eventColumns(reading), spaceId, actorId: userId, payloadHash: hash }],
      skipDuplicates: true,
    });
    return count === 1 ? "stored" : requireSame(tx, spaceId, reading.id, hash);
  });
}

function eventColumns(reading: ReadingInput) {
  const { id, brewId, deviceId, deviceSeq, occurredAt, quantity, value, sd, instrument, sampleC, note, entered } =
    reading;
  const payload: EventPayload = { quantity, sd, instrument, sampleC, note, entered };
  return {
    id,
    brewId,
    deviceId,
    deviceSeq,
    occurredAt,
    ...toEventValue(quantity, value),
    payload: toJson(payload),
  };
}

/** Tells a repeated delivery from another reading under a number that is taken. */
async function requireSame(tx: SpaceTransaction, spaceId: string, id: string, hash: Uint8Array): Promise<"duplicate"> {
  const kept = await tx.brewEvent.findUnique({
    where: { spaceId_id: { spaceId, id } },
    select: { payloadHash: true },
  });
  if (kept !== null && sameBytes(kept.payloadHash, hash)) return "duplicate";
  throw new AppError(
    "CONFLICT",
    kept === null
      ? "This device has already used that number for another reading; nothing was changed."
      : "Another reading with this identifier is in the log already; nothing was changed.",
  );
}
