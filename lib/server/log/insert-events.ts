import "server-only";
import type { LogEvent } from "@/lib/model/log/log-event";
import { arrayLiteral } from "../array-literal";
import type { SpaceTransaction } from "../db";
import { sha256Hex } from "../tokens";
import { canonicalEvent } from "./canonical-event";
import { toColumns, type EventColumns } from "./event-row";
import { columnOf, partsOf } from "./shared-columns";

/** An event on its way into the log. */
export interface NewEvent {
  readonly event: LogEvent;
  readonly actorId: string;
  /** By the sender's clock, when it was sent; null from who does not say. */
  readonly sentAt: string | null;
  readonly clockOffsetMs: number | null;
}

/** What became of one event. */
export type Fate =
  | { readonly id: string; readonly fate: "stored" }
  | { readonly id: string; readonly fate: "duplicate" }
  | { readonly id: string; readonly fate: "rejected"; readonly reason: string; readonly isSequenceTaken: boolean };

interface Row {
  readonly columns: EventColumns;
  readonly of: NewEvent;
  /** Tells a repeated delivery from another event under the same identifier; in hexadecimal digits. */
  readonly hash: string;
}

/**
 * Writes events with one statement. What is there already is left as it is; the database decides, so that two
 * deliveries at the same moment come to the same.
 */
export async function insertEvents(
  tx: SpaceTransaction,
  spaceId: string,
  events: readonly NewEvent[],
): Promise<readonly Fate[]> {
  const rows = events.map((of): Row => {
    const { event, actorId } = of;
    return { columns: toColumns(event), of, hash: sha256Hex(canonicalEvent(event, actorId)) };
  });
  if (rows.length === 0) return [];
  const isStored = await insertRows(tx, spaceId, rows);
  const others = rows.map(({ columns }) => columns.id).filter((id) => !isStored.has(id));
  const kept = await keptHashes(tx, spaceId, others);
  return rows.map(({ columns: { id }, hash }) => fateOf(id, isStored, kept, hash));
}

/** The identifiers of those that were not there. */
async function insertRows(tx: SpaceTransaction, spaceId: string, rows: readonly Row[]): Promise<ReadonlySet<string>> {
  const [brew, device, sequence, actor] = [
    columnOf(rows, ({ columns }) => columns.brewId),
    columnOf(rows, ({ columns }) => columns.deviceId),
    columnOf(rows, ({ columns }) => columns.deviceSeq),
    columnOf(rows, ({ of }) => of.actorId),
  ];
  const [kind, sent, offset] = [
    columnOf(rows, ({ columns }) => columns.kind),
    columnOf(rows, ({ of }) => of.sentAt),
    columnOf(rows, ({ of }) => of.clockOffsetMs),
  ];
  const [unit, target] = [
    columnOf(rows, ({ columns }) => columns.unit),
    columnOf(rows, ({ columns }) => columns.targetId),
  ];
  const payload = partsOf(rows.map(({ columns }) => columns.payload));
  const each = (valueOf: (row: Row) => string | number | null): string => arrayLiteral(rows.map(valueOf));
  // One array a column: the database takes half as long again over the same as one JSON text.
  // One row of the answer, for the client looks at each value of each row.
  const [stored] = await tx.$queryRaw<{ ids: string | null }[]>`
    WITH stored AS (
      INSERT INTO brew_event (space_id, id, brew_id, device_id, device_seq, actor_id, kind, occurred_at, client_sent_at,
                              clock_offset_ms, value, unit, payload, target_id, payload_hash)
      SELECT ${spaceId}::uuid, id, COALESCE(brew_id, ${brew.shared}::uuid), COALESCE(device_id, ${device.shared}::uuid),
             COALESCE(device_seq, ${sequence.shared}::bigint), COALESCE(actor_id, ${actor.shared}::uuid),
             COALESCE(kind, ${kind.shared}), occurred_at, COALESCE(client_sent_at, ${sent.shared}::timestamptz),
             COALESCE(clock_offset_ms, ${offset.shared}::bigint), value, COALESCE(unit, ${unit.shared}),
             ${payload.shared}::jsonb || payload,
             COALESCE(target_id, ${target.shared}::uuid), decode(hash, 'hex')
      FROM unnest(
        ${each(({ columns }) => columns.id)}::uuid[], ${brew.each}::uuid[], ${device.each}::uuid[],
        ${sequence.each}::bigint[], ${actor.each}::uuid[], ${kind.each}::text[],
        ${each(({ columns }) => columns.occurredAt)}::timestamptz[], ${sent.each}::timestamptz[],
        ${offset.each}::bigint[], ${each(({ columns }) => columns.value)}::float8[], ${unit.each}::text[],
        ${arrayLiteral(payload.each)}::jsonb[], ${target.each}::uuid[],
        ${each(({ hash }) => hash)}::text[]
      ) AS r (id, brew_id, device_id, device_seq, actor_id, kind, occurred_at, client_sent_at, clock_offset_ms, value, unit,
              payload, target_id, hash)
      ON CONFLICT DO NOTHING
      RETURNING id)
    SELECT string_agg(id::text, ' ') AS ids FROM stored`;
  return new Set(stored?.ids?.split(" ") ?? []);
}

async function keptHashes(
  tx: SpaceTransaction,
  spaceId: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  if (ids.length === 0) return new Map();
  const rows = await tx.brewEvent.findMany({
    where: { spaceId, id: { in: [...ids] } },
    select: { id: true, payloadHash: true },
  });
  return new Map(rows.map(({ id, payloadHash }) => [id, Buffer.from(payloadHash).toString("hex")]));
}

function fateOf(id: string, isStored: ReadonlySet<string>, kept: ReadonlyMap<string, string>, hash: string): Fate {
  if (isStored.has(id)) return { id, fate: "stored" };
  const there = kept.get(id);
  if (there === hash) return { id, fate: "duplicate" };
  const reason =
    there === undefined
      ? "This device has already used that number for another reading; nothing was changed."
      : "Another reading with this identifier is in the log already; nothing was changed.";
  return { id, fate: "rejected", reason, isSequenceTaken: there === undefined };
}
