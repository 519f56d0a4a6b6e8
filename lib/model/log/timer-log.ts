import { effectiveTime, inServerTime, type LogEntry } from "./log-entry";

/** An alarm of the log. */
export interface LoggedTimer {
  readonly timer: string;
  readonly label: string;
  readonly step: string | null;
  /** ms since 1970. */
  readonly dueAt: number;
  readonly acknowledged: { readonly at: number; readonly byName: string } | null;
  readonly isCleared: boolean;
}

/**
 * The alarms of the log. Setting one again moves it and asks for a new acknowledgement; of several acknowledgements the
 * first counts, for it is the one that ended the noise.
 *
 * @param ordered - In the order of the log, without what was voided.
 */
export function timerLog(ordered: readonly LogEntry[]): ReadonlyMap<string, LoggedTimer> {
  const timers = new Map<string, LoggedTimer>();
  for (const entry of ordered) {
    const { event, actorName } = entry;
    if (event.kind !== "timer") continue;
    const { timer, label, step, dueAt } = event;
    const before = timers.get(timer);
    if (event.act === "set") {
      if (dueAt === null) continue;
      timers.set(timer, {
        timer,
        label,
        step,
        dueAt: inServerTime(entry.clockOffsetMs, Date.parse(dueAt)),
        acknowledged: null,
        isCleared: false,
      });
    } else if (before !== undefined) {
      const acknowledged = before.acknowledged ?? { at: effectiveTime(entry), byName: actorName };
      timers.set(timer, event.act === "cleared" ? { ...before, isCleared: true } : { ...before, acknowledged });
    }
  }
  return timers;
}
