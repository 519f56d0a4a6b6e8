import { correctedValue, verdictOf, type Verdict } from "./corrections";
import { effectiveTime, type LogEntry } from "./log-entry";
import { isMeasured, type Measured } from "./log-event";

/** One reading with all that became of it. */
export interface LoggedReading {
  readonly id: string;
  /** What counts now: the value first given or the one that corrected it. */
  readonly measured: Measured;
  /** ms since 1970; a correction tells what was read then, so it keeps the time. */
  readonly at: number;
  readonly actorName: string;
  /** ISO 8601; null while what counts is on this device only. */
  readonly receivedAt: string | null;
  readonly deviceId: string;
  readonly deviceSeq: number | null;
  readonly isVoid: boolean;
  /** Why it does not count, in its writer's words. */
  readonly voidedWhy: string;
  readonly contested: boolean;
  /** Every value that it has had, the first one first. */
  readonly history: readonly ReadingVersion[];
  /** Ids of all changes known here, which a further one has seen. */
  readonly changes: readonly string[];
}

/** A value that was given at some time. */
export interface ReadingVersion {
  readonly id: string;
  readonly measured: Measured | null;
  /** Of a void: why. */
  readonly why: string;
  readonly at: number;
  readonly actorName: string;
  readonly receivedAt: string | null;
}

/** A measured entry as a reading; null for another kind of event. */
export function loggedReading(entry: LogEntry, changes: readonly LogEntry[] | undefined): LoggedReading | null {
  const { event, actorName, receivedAt } = entry;
  if (!isMeasured(event)) return null;
  const verdict: Verdict = verdictOf(changes);
  const { change, by, contested } = verdict;
  return {
    id: event.id,
    measured: correctedValue(verdict) ?? event,
    at: effectiveTime(entry),
    actorName: by?.actorName ?? actorName,
    receivedAt: by === null ? receivedAt : by.receivedAt,
    deviceId: event.deviceId,
    deviceSeq: event.deviceSeq,
    isVoid: change?.kind === "void",
    voidedWhy: change?.kind === "void" ? change.why : "",
    contested,
    history: [versionOf(entry), ...(changes ?? []).map(versionOf)],
    changes: (changes ?? []).map((each) => each.event.id),
  };
}

function versionOf(entry: LogEntry): ReadingVersion {
  const { event, actorName, receivedAt } = entry;
  const common = { id: event.id, at: effectiveTime(entry), actorName, receivedAt };
  if (event.kind === "correct") return { ...common, measured: event.measured, why: "" };
  if (event.kind === "void") return { ...common, measured: null, why: event.why };
  return { ...common, measured: isMeasured(event) ? event : null, why: "" };
}
