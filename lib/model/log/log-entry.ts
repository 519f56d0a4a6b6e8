import type { EventStamp, LogEvent } from "./log-event";

/** What the order of a log looks at; what a tasting's judges write has it as well. */
export type Stamped = Pick<EventStamp, "id" | "deviceId" | "deviceSeq" | "occurredAt">;

/** An event with what is known of it: who made it, and whether and when it reached the server. */
export interface LogEntry<E extends Stamped = LogEvent> {
  readonly event: E;
  readonly actorId: string;
  readonly actorName: string;
  /** ISO 8601, by the server's clock; null while it is on this device only. */
  readonly receivedAt: string | null;
  /** How far the server's clock was ahead of the device's; null when that is not known. */
  readonly clockOffsetMs: number | null;
}

/** A clock that is off by less is within what people call the same minute, and is left alone. */
const TRUSTED_CLOCK_MS = 60_000;

/** When an event happened, ms since 1970: by the device's clock, or by the server's where the device's is clearly wrong. */
export function effectiveTime({ event, clockOffsetMs }: Pick<LogEntry<Stamped>, "event" | "clockOffsetMs">): number {
  return inServerTime(clockOffsetMs, Date.parse(event.occurredAt));
}

/** A time by a device's clock, moved to the server's where the device's is clearly wrong. */
export function inServerTime(clockOffsetMs: number | null, stated: number): number {
  const isOff = clockOffsetMs !== null && Math.abs(clockOffsetMs) > TRUSTED_CLOCK_MS;
  return isOff ? stated + clockOffsetMs : stated;
}

/** The one order in which the log is read, whatever order it arrived in. */
export function inOrder(a: LogEntry<Stamped>, b: LogEntry<Stamped>): number {
  return (
    effectiveTime(a) - effectiveTime(b) ||
    compare(a.event.deviceId, b.event.deviceId) ||
    (a.event.deviceSeq ?? 0) - (b.event.deviceSeq ?? 0) ||
    compare(a.event.id, b.event.id)
  );
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/**
 * Each event once, in the order of the log. Of two entries for one event the one counts that the server has answered:
 * it knows more.
 */
export function mergeEntries<E extends Stamped>(entries: readonly LogEntry<E>[]): readonly LogEntry<E>[] {
  const byId = new Map<string, LogEntry<E>>();
  for (const entry of entries) {
    const known = byId.get(entry.event.id);
    if (known === undefined || (known.receivedAt === null && entry.receivedAt !== null))
      byId.set(entry.event.id, entry);
  }
  return [...byId.values()].sort(inOrder);
}
