import type { LoggedTimer } from "@/lib/model/log/timer-log";

/** An alarm as it stands at one moment. */
export interface Alarm extends LoggedTimer {
  readonly isDue: boolean;
}

/** The alarms that are still to come or are ringing, the next one first. What was acknowledged or cleared is over. */
export function openAlarms(timers: ReadonlyMap<string, LoggedTimer>, now: number): readonly Alarm[] {
  return [...timers.values()]
    .filter(({ acknowledged, isCleared }) => acknowledged === null && !isCleared)
    .map((timer) => ({ ...timer, isDue: timer.dueAt <= now }))
    .sort((one, other) => one.dueAt - other.dueAt || (one.timer < other.timer ? -1 : 1));
}
