import { changesByTarget, verdictOf } from "./corrections";
import { effectiveTime, mergeEntries, type LogEntry } from "./log-entry";
import type { AdditionMade, NoteWritten, Packaged, PhotoTaken, Pitched } from "./log-event";
import { loggedReading, type LoggedReading } from "./logged-readings";
import { stepLog, type LoggedStep } from "./step-log";
import { timerLog, type LoggedTimer } from "./timer-log";

/** Something of the log that is no reading and no step, with who and when. */
export interface Logged<C> {
  readonly id: string;
  readonly at: number;
  readonly actorName: string;
  readonly receivedAt: string | null;
  readonly content: C;
}

/** What the events of a brew come to. */
export interface BrewLog {
  readonly readings: readonly LoggedReading[];
  readonly steps: ReadonlyMap<string, LoggedStep>;
  readonly timers: ReadonlyMap<string, LoggedTimer>;
  readonly additions: readonly Logged<AdditionMade>[];
  readonly pitches: readonly Logged<Pitched>[];
  readonly packagings: readonly Logged<Packaged>[];
  readonly notes: readonly Logged<NoteWritten>[];
  readonly photos: readonly Logged<PhotoTaken>[];
}

/**
 * Reads the log. The result depends on which events there are and on nothing else: not on the order in which they came,
 * nor on how often.
 */
export function projectLog(entries: readonly LogEntry[]): BrewLog {
  const ordered = mergeEntries(entries);
  const changes = changesByTarget(ordered);
  const counting = ordered.filter(({ event }) => verdictOf(changes.get(event.id)).change?.kind !== "void");
  return {
    readings: ordered.flatMap((entry) => loggedReading(entry, changes.get(entry.event.id)) ?? []),
    steps: stepLog(counting),
    timers: timerLog(counting),
    additions: ofKind(counting, "addition"),
    pitches: ofKind(counting, "pitch"),
    packagings: ofKind(counting, "package"),
    notes: ofKind(counting, "note"),
    photos: ofKind(counting, "photo"),
  };
}

type ContentOf<K extends LogEntry["event"]["kind"]> = Extract<LogEntry["event"], { readonly kind: K }>;

function ofKind<K extends LogEntry["event"]["kind"]>(
  ordered: readonly LogEntry[],
  kind: K,
): readonly Logged<ContentOf<K>>[] {
  return ordered.flatMap((entry) => {
    const { event, actorName, receivedAt } = entry;
    if (!isOfKind(event, kind)) return [];
    return [{ id: event.id, at: effectiveTime(entry), actorName, receivedAt, content: event }];
  });
}

function isOfKind<K extends LogEntry["event"]["kind"]>(event: LogEntry["event"], kind: K): event is ContentOf<K> {
  return event.kind === kind;
}
