import "server-only";
import { loggedRange } from "@/lib/model/log/series";
import type { LogEvent } from "@/lib/model/log/log-event";
import type { ReadingInput } from "@/lib/model/reading-input";
import { AppError } from "../app-error";
import { storeEvents } from "../log/ingest";
import { NO_SUCH_BREW, NOT_YOURS } from "../log/writable-brews";
import type { Member } from "../session";

/**
 * Adds a reading to the log of a brew. A phone may send the same reading many times: it is kept once, and every time
 * answered well. It is never overwritten.
 */
export async function recordReading(member: Member, reading: ReadingInput): Promise<"stored" | "duplicate"> {
  const event = eventOf(reading);
  const [fate] = await storeEvents(member, [{ event, actorId: member.userId, sentAt: null, clockOffsetMs: null }]);
  if (fate === undefined) throw new Error("a reading without a fate");
  if (fate.fate !== "rejected") return fate.fate;
  if (fate.reason === NO_SUCH_BREW) throw new AppError("NOT_FOUND", fate.reason);
  throw new AppError(fate.reason === NOT_YOURS ? "FORBIDDEN" : "CONFLICT", fate.reason);
}

function eventOf(reading: ReadingInput): LogEvent {
  const { occurredAt, ...said } = reading;
  return {
    ...said,
    kind: loggedRange(reading.quantity).kind,
    occurredAt: occurredAt.toISOString(),
    step: null,
  };
}
