import "server-only";
import { effectiveTime, inServerTime } from "@/lib/model/log/log-entry";
import type { LogEvent, TimerAct } from "@/lib/model/log/log-event";
import type { SpaceTransaction } from "../db";
import type { NewEvent } from "../log/insert-events";

type TimerEvent = Extract<LogEvent, TimerAct>;

interface Said {
  readonly event: TimerEvent;
  readonly actorId: string;
  readonly saidAt: number;
  readonly dueAt: number | null;
}

/**
 * Keeps what is due by the timers of stored events, in the transaction that stores them. Setting a timer makes it due,
 * acknowledging or clearing it ends that. Of what is said of one timer the latest counts, whatever order it comes in. A
 * timer whose setting is void is over.
 */
export async function scheduleAlarms(
  tx: SpaceTransaction,
  spaceId: string,
  events: readonly NewEvent[],
): Promise<void> {
  const latest = new Map<string, Said>();
  for (const said of events.flatMap(saidOf)) {
    const key = `${said.event.brewId} ${said.event.timer}`;
    const before = latest.get(key);
    if (before === undefined || isLater(said, before)) latest.set(key, said);
  }
  if (latest.size > 0) await keep(tx, spaceId, [...latest.values()]);
  const voided = events.flatMap(({ event }) => (event.kind === "void" ? [event.targetId] : []));
  if (voided.length === 0) return;
  await tx.$executeRaw`
    UPDATE alarm_due SET due_at = NULL, next_try_at = NULL
    WHERE space_id = ${spaceId}::uuid AND event_id = ANY (${voided}::uuid[])`;
}

function saidOf({ event, actorId, clockOffsetMs }: NewEvent): readonly Said[] {
  if (event.kind !== "timer") return [];
  const saidAt = effectiveTime({ event, clockOffsetMs });
  // A clock that tells the time of the entry wrongly tells that of the alarm as wrongly.
  const isSet = event.act === "set" && event.dueAt !== null;
  const dueAt = isSet ? inServerTime(clockOffsetMs, Date.parse(event.dueAt)) : null;
  return [{ event, actorId, saidAt, dueAt }];
}

function isLater(a: Said, b: Said): boolean {
  return a.saidAt === b.saidAt ? a.event.id > b.event.id : a.saidAt > b.saidAt;
}

async function keep(tx: SpaceTransaction, spaceId: string, said: readonly Said[]): Promise<void> {
  const rows = said.map(({ event, actorId, saidAt, dueAt }) => ({
    brew_id: event.brewId,
    timer: event.timer,
    said_at: new Date(saidAt).toISOString(),
    event_id: event.id,
    actor_id: actorId,
    label: event.label,
    due_at: dueAt === null ? null : new Date(dueAt).toISOString(),
  }));
  await tx.$executeRaw`
    INSERT INTO alarm_due AS a (space_id, brew_id, timer, said_at, event_id, actor_id, label, due_at, next_try_at)
    SELECT ${spaceId}::uuid, brew_id, timer, said_at, event_id, actor_id, label, due_at, due_at
    FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r (
      brew_id uuid, timer text, said_at timestamptz, event_id uuid, actor_id uuid, label text, due_at timestamptz)
    ON CONFLICT (space_id, brew_id, timer) DO UPDATE
      SET said_at = excluded.said_at, event_id = excluded.event_id, actor_id = excluded.actor_id,
          label = excluded.label, due_at = excluded.due_at, next_try_at = excluded.due_at,
          attempts = 0, reached = '{}', done_at = NULL
      WHERE (excluded.said_at, excluded.event_id) > (a.said_at, a.event_id)`;
}
