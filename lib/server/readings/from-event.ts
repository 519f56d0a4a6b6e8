import "server-only";
import { z } from "zod";
import { platoToSpecificGravity, specificGravityToPlato } from "@/lib/calc/gravity";
import { degreesPlato, specificGravity } from "@/lib/calc/units";
import { INSTRUMENTS, MEASURABLE_IDS, readingRange, type MeasurableId, type Reading } from "@/lib/model/reading";

/** What an event says beside its value, in the units of the ledger. */
const eventPayload = z.object({
  quantity: z.enum(MEASURABLE_IDS),
  sd: z.number(),
  instrument: z.enum(INSTRUMENTS),
  sampleC: z.number().nullable(),
  note: z.string(),
  entered: z.string(),
});
export type EventPayload = z.output<typeof eventPayload>;

/** The log's own unit for each kind; gravity is kept as it is read from the glass, not as extract. */
const UNIT_OF_EVENT = { volume: "L", temperature: "C", gravity: "sg", duration: "min" } as const;

interface EventValue {
  readonly kind: keyof typeof UNIT_OF_EVENT;
  readonly value: number;
  readonly unit: (typeof UNIT_OF_EVENT)[keyof typeof UNIT_OF_EVENT];
}

/** A ledger value as the log keeps it. */
export function toEventValue(quantity: MeasurableId, value: number): EventValue {
  const { kind } = readingRange(quantity);
  const kept = kind === "gravity" ? platoToSpecificGravity(degreesPlato(value)) : value;
  return { kind, value: kept, unit: UNIT_OF_EVENT[kind] };
}

interface EventRow {
  readonly id: string;
  readonly brewId: string;
  readonly deviceId: string;
  readonly deviceSeq: bigint;
  readonly actorId: string;
  readonly kind: string;
  readonly value: number | null;
  readonly payload: unknown;
  readonly occurredAt: Date;
  readonly receivedAt: Date;
}

export const EVENT_COLUMNS = {
  id: true,
  brewId: true,
  deviceId: true,
  deviceSeq: true,
  actorId: true,
  kind: true,
  value: true,
  payload: true,
  occurredAt: true,
  receivedAt: true,
} as const;

/** An event of the log as a reading; null for an event that is none, such as a note. */
export function toReading(event: EventRow, nameOf: (userId: string) => string): Reading | null {
  const payload = eventPayload.safeParse(event.payload);
  if (event.value === null || !payload.success) return null;
  return {
    ...payload.data,
    id: event.id,
    brewId: event.brewId,
    deviceId: event.deviceId,
    deviceSeq: Number(event.deviceSeq),
    value: event.kind === "gravity" ? specificGravityToPlato(specificGravity(event.value)) : event.value,
    occurredAt: event.occurredAt,
    actorName: nameOf(event.actorId),
    receivedAt: event.receivedAt,
  };
}
