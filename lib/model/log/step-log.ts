import type { StepRecord } from "@/lib/calc/runsheet";
import { effectiveTime, type LogEntry } from "./log-entry";
import type { EventStamp, StepAct } from "./log-event";

/** What the log knows of one step of the day. Times are ms since 1970. */
export interface LoggedStep {
  readonly step: string;
  readonly begunAt: number | null;
  readonly doneAt: number | null;
  /** Left out, with the reason; null while it was not. */
  readonly leftOut: { readonly at: number; readonly why: string } | null;
  /** Of a step that the brewer added. */
  readonly added: { readonly title: string; readonly minutes: number; readonly after: string | null } | null;
  /** Who did the last of it. */
  readonly byName: string;
  /** Whether all of it has reached the server. */
  readonly isSafe: boolean;
}

/**
 * What was done with each step. The first of two who confirm the same step counts; taking it back opens it again.
 *
 * @param ordered - In the order of the log, without what was voided.
 */
export function stepLog(ordered: readonly LogEntry[]): ReadonlyMap<string, LoggedStep> {
  const steps = new Map<string, LoggedStep>();
  for (const entry of ordered) {
    const { event } = entry;
    if (event.kind !== "step") continue;
    const before = steps.get(event.step) ?? untouched(event.step);
    const isSafe = before.isSafe && entry.receivedAt !== null;
    steps.set(event.step, { ...after(before, event, effectiveTime(entry)), byName: entry.actorName, isSafe });
  }
  return steps;
}

function untouched(step: string): LoggedStep {
  return { step, begunAt: null, doneAt: null, leftOut: null, added: null, byName: "", isSafe: true };
}

function after(before: LoggedStep, event: EventStamp & StepAct, at: number): LoggedStep {
  switch (event.act) {
    case "begun":
      return before.begunAt === null ? { ...before, begunAt: at, leftOut: null } : before;
    case "done":
      if (before.doneAt !== null) return before;
      return { ...before, begunAt: before.begunAt ?? at, doneAt: at, leftOut: null };
    case "left out":
      return before.doneAt === null ? { ...before, begunAt: null, leftOut: { at, why: event.why } } : before;
    case "taken back":
      return { ...before, begunAt: null, doneAt: null, leftOut: null };
    case "added":
      return { ...before, added: { title: event.title, minutes: event.minutes, after: event.after } };
  }
}

const MINUTE_MS = 60_000;

/**
 * The records of the day for replanning, in minutes from its start. What lies before the start, as the clocks of two
 * phones may have it, is put at the start; what lies ahead of `now`, at now.
 */
export function stepRecords(steps: ReadonlyMap<string, LoggedStep>, startedAt: number, now: number): StepRecord[] {
  const minute = (at: number): number =>
    Math.min(Math.max(0, at - startedAt), Math.max(0, now - startedAt)) / MINUTE_MS;
  return [...steps.values()].flatMap(({ step, begunAt, doneAt, leftOut }): StepRecord[] => {
    if (leftOut !== null) return [{ step, startMin: null, endMin: null }];
    if (begunAt === null) return [];
    const startMin = minute(begunAt);
    return [{ step, startMin, endMin: doneAt === null ? null : Math.max(startMin, minute(doneAt)) }];
  });
}
