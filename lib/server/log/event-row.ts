import "server-only";
import { platoToSpecificGravity, specificGravityToPlato } from "@/lib/calc/gravity";
import { degreesPlato, specificGravity } from "@/lib/calc/units";
import { isMeasured, type EventStamp, type LogEvent, type Measured } from "@/lib/model/log/log-event";
import type { MeasuredKind } from "@/lib/model/log/series";
import { logEventInput } from "@/lib/model/log/log-event-input";

/** The log's own unit for each kind; gravity is kept as it is read from the glass, not as extract. */
const COLUMN_UNIT: Readonly<Record<MeasuredKind, string>> = {
  volume: "L",
  temperature: "C",
  gravity: "sg",
  duration: "min",
  ph: "pH",
  pressure: "kPa",
  energy: "kWh",
};

const KPA_PER_BAR = 100;

/** What the columns of an event are besides those that every event has. */
export interface EventColumns {
  readonly id: string;
  readonly brewId: string;
  readonly deviceId: string;
  readonly deviceSeq: number | null;
  readonly occurredAt: string;
  readonly kind: string;
  readonly value: number | null;
  readonly unit: string | null;
  readonly targetId: string | null;
  readonly payload: Readonly<Record<string, unknown>>;
}

/** An event as its row; what has a column of its own is not said twice. */
export function toColumns(event: LogEvent): EventColumns {
  if (isMeasured(event)) return measuredColumns(event);
  const { id, brewId, deviceId, deviceSeq, occurredAt, kind, ...content } = event;
  const stamp = { id, brewId, deviceId, deviceSeq, occurredAt, kind };
  if (event.kind === "correct") {
    const { seen, measured, targetId } = event;
    return { ...stamp, ...columnValue(measured), targetId, payload: { seen, measured } };
  }
  if (event.kind === "void") {
    const { seen, why, targetId } = event;
    return { ...stamp, value: null, unit: null, targetId, payload: { seen, why } };
  }
  return { ...stamp, value: null, unit: null, targetId: null, payload: content };
}

/** Without copying the rest of it: sensors send them by the thousand. */
function measuredColumns(event: EventStamp & Measured): EventColumns {
  const { id, brewId, deviceId, deviceSeq, occurredAt, kind } = event;
  const { quantity, sd, instrument, sampleC, note, entered, step } = event;
  const { value, unit } = columnValue(event);
  const payload = { quantity, sd, instrument, sampleC, note, entered, step };
  return { id, brewId, deviceId, deviceSeq, occurredAt, kind, value, unit, targetId: null, payload };
}

function columnValue({ kind, value }: Measured): { readonly value: number; readonly unit: string } {
  const unit = COLUMN_UNIT[kind];
  if (kind === "gravity") return { value: platoToSpecificGravity(degreesPlato(value)), unit };
  return { value: kind === "pressure" ? value * KPA_PER_BAR : value, unit };
}

/** An event row as the database gives it. */
export interface EventRow {
  readonly id: string;
  readonly brewId: string;
  readonly deviceId: string;
  readonly deviceSeq: bigint | null;
  readonly actorId: string;
  readonly kind: string;
  readonly value: number | null;
  readonly targetId: string | null;
  readonly payload: unknown;
  readonly occurredAt: Date;
  readonly receivedAt: Date;
  readonly clockOffsetMs: bigint | null;
}

export const EVENT_COLUMNS = {
  id: true,
  brewId: true,
  deviceId: true,
  deviceSeq: true,
  actorId: true,
  kind: true,
  value: true,
  targetId: true,
  payload: true,
  occurredAt: true,
  receivedAt: true,
  clockOffsetMs: true,
} as const;

/** The event of a row; null where an older version of the program wrote what this one does not understand. */
export function fromRow(row: EventRow): LogEvent | null {
  const { id, brewId, deviceId, deviceSeq, kind, occurredAt, payload } = row;
  const stamp: EventStamp = {
    id,
    brewId,
    deviceId,
    deviceSeq: deviceSeq === null ? null : Number(deviceSeq),
    occurredAt: occurredAt.toISOString(),
  };
  const said = typeof payload === "object" && payload !== null ? payload : {};
  const target = row.targetId === null ? {} : { targetId: row.targetId };
  const value = row.value === null || kind === "correct" ? {} : { value: libraryValue(kind, row.value) };
  // Readings from before there were steps in the log name none.
  const step = row.value === null || kind === "correct" || "step" in said ? {} : { step: null };
  const parsed = logEventInput.safeParse({ ...stamp, kind, ...step, ...said, ...target, ...value });
  return parsed.success ? parsed.data : null;
}

function libraryValue(kind: string, value: number): number {
  if (kind === "gravity") return specificGravityToPlato(specificGravity(value));
  return kind === "pressure" ? value / KPA_PER_BAR : value;
}
