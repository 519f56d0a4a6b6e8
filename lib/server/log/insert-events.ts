import "server-only";
import type { LogEvent } from "@/lib/model/log/log-event";
import { contentHash, sameBytes } from "../content-hash";
import type { SpaceTransaction } from "../db";
import { toColumns } from "./event-row";

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

/** Tells a repeated delivery from another event under the same identifier. */
export function eventHash(event: LogEvent, actorId: string): Uint8Array<ArrayBuffer> {
  return contentHash({ ...event, actorId });
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
  if (events.length === 0) return [];
  const hashes = new Map<string, Uint8Array>();
  const rows = events.map(({ event, actorId, sentAt, clockOffsetMs }) => {
    const hash = eventHash(event, actorId);
    hashes.set(event.id, hash);
    const { id, brewId, deviceId, deviceSeq, kind, occurredAt, value, unit, payload, targetId } = toColumns(event);
    return {
      space_id: spaceId,
      id,
      brew_id: brewId,
      device_id: deviceId,
      device_seq: deviceSeq,
      actor_id: actorId,
      kind,
      occurred_at: occurredAt,
      client_sent_at: sentAt,
      clock_offset_ms: clockOffsetMs,
      value,
      unit,
      payload,
      target_id: targetId,
      hash: Buffer.from(hash).toString("hex"),
    };
  });
  const stored = await tx.$queryRaw<{ id: string }[]>`
    INSERT INTO brew_event (space_id, id, brew_id, device_id, device_seq, actor_id, kind, occurred_at, client_sent_at,
                            clock_offset_ms, value, unit, payload, target_id, payload_hash)
    SELECT space_id, id, brew_id, device_id, device_seq, actor_id, kind, occurred_at, client_sent_at,
           clock_offset_ms, value, unit, payload, target_id, decode(hash, 'hex')
    FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r (
      space_id uuid, id uuid, brew_id uuid, device_id uuid, device_seq bigint, actor_id uuid, kind text,
      occurred_at timestamptz, client_sent_at timestamptz, clock_offset_ms bigint, value double precision, unit text,
      payload jsonb, target_id uuid, hash text)
    ON CONFLICT DO NOTHING
    RETURNING id::text`;
  const isStored = new Set(stored.map(({ id }) => id));
  const others = events.map(({ event }) => event.id).filter((id) => !isStored.has(id));
  const kept = await keptHashes(tx, spaceId, others);
  return events.map(({ event: { id } }) => fateOf(id, isStored, kept, hashes.get(id)));
}

async function keptHashes(
  tx: SpaceTransaction,
  spaceId: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, Uint8Array>> {
  if (ids.length === 0) return new Map();
  const rows = await tx.brewEvent.findMany({
    where: { spaceId, id: { in: [...ids] } },
    select: { id: true, payloadHash: true },
  });
  return new Map(rows.map(({ id, payloadHash }) => [id, payloadHash]));
}

function fateOf(
  id: string,
  isStored: ReadonlySet<string>,
  kept: ReadonlyMap<string, Uint8Array>,
  hash: Uint8Array | undefined,
): Fate {
  if (isStored.has(id)) return { id, fate: "stored" };
  const there = kept.get(id);
  if (there !== undefined && hash !== undefined && sameBytes(there, hash)) return { id, fate: "duplicate" };
  const reason =
    there === undefined
      ? "This device has already used that number for another reading; nothing was changed."
      : "Another reading with this identifier is in the log already; nothing was changed.";
  return { id, fate: "rejected", reason, isSequenceTaken: there === undefined };
}
