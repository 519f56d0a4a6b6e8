import type { LogEntry } from "./log-entry";
import type { Correction, EventStamp, Measured, Voided } from "./log-event";

type Change = EventStamp & (Correction | Voided);

/** What the log says of one event after all corrections of it. */
export interface Verdict {
  /** The correction or the void that counts; null when there is none. */
  readonly by: LogEntry | null;
  readonly change: Change | null;
  /** Two people corrected it without having seen each other's correction. */
  readonly contested: boolean;
}

const UNTOUCHED: Verdict = { by: null, change: null, contested: false };

/** Everything that changes an event, by the event that it changes. */
export function changesByTarget(ordered: readonly LogEntry[]): ReadonlyMap<string, readonly LogEntry[]> {
  const changes = new Map<string, LogEntry[]>();
  for (const entry of ordered) {
    const { event } = entry;
    if (event.kind !== "correct" && event.kind !== "void") continue;
    changes.set(event.targetId, [...(changes.get(event.targetId) ?? []), entry]);
  }
  return changes;
}

/**
 * The change that counts: one that no other has seen. Of several such, the last in the order of the log counts, and the
 * verdict is contested until somebody who has seen both writes a further one.
 *
 * @param changes - In the order of the log.
 */
export function verdictOf(changes: readonly LogEntry[] | undefined): Verdict {
  if (changes === undefined) return UNTOUCHED;
  const seen = new Set(changes.flatMap(({ event }) => seenBy(event)));
  const latest = changes.filter(({ event }) => !seen.has(event.id));
  // Corrections that name each other in a circle cannot have seen each other; then time alone decides.
  const by = (latest.length === 0 ? changes : latest).at(-1) ?? null;
  if (by === null) return UNTOUCHED;
  return { by, change: changeOf(by.event), contested: latest.length > 1 };
}

function seenBy(event: LogEntry["event"]): readonly string[] {
  if (event.kind !== "correct" && event.kind !== "void") return [];
  return event.seen.filter((id) => id !== event.id);
}

function changeOf(event: LogEntry["event"]): Change | null {
  return event.kind === "correct" || event.kind === "void" ? event : null;
}

/** The value that a correction puts in place. */
export function correctedValue({ change }: Verdict): Measured | null {
  return change?.kind === "correct" ? change.measured : null;
}
