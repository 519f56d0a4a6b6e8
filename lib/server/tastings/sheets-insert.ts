import "server-only";
import { sheetTotal } from "@/lib/model/tasting/sheet";
import type { TastingEvent } from "@/lib/model/tasting/sheet-event";
import { arrayLiteral } from "../array-literal";
import { contentHash, sameBytes } from "../content-hash";
import type { SpaceTransaction } from "../db";

/** A sheet or a choice on its way into the archive. */
export interface NewSheet {
  readonly event: TastingEvent;
  readonly judgeId: string;
  /** The judge, or the steward who enters it from paper. */
  readonly actorId: string;
  /** By the sender's clock, when it was sent; null from paper. */
  readonly sentAt: string | null;
  readonly clockOffsetMs: number | null;
}

/** What became of one event. */
export type SheetFate =
  | { readonly id: string; readonly fate: "stored" | "duplicate" }
  | { readonly id: string; readonly fate: "rejected"; readonly reason: string; readonly isSequenceTaken: boolean };

/** Writes events with one statement; what is there already is left as it is, and the database decides what is there. */
export async function insertSheets(
  tx: SpaceTransaction,
  spaceId: string,
  sheets: readonly NewSheet[],
): Promise<readonly SheetFate[]> {
  if (sheets.length === 0) return [];
  const rows = sheets.map((sheet) => ({ ...sheet, hash: contentHash(hashed(sheet)) }));
  const column = (valueOf: (row: (typeof rows)[number]) => string | number | null): string =>
    arrayLiteral(rows.map(valueOf));
  const [stored] = await tx.$queryRaw<{ ids: string | null }[]>`
    WITH stored AS (INSERT INTO tasting_event
      (space_id, id, tasting_id, flight_no, judge_id, actor_id, kind, entry_no, device_id, device_seq, occurred_at,
       client_sent_at, clock_offset_ms, is_final, total, payload, payload_hash)
    SELECT ${spaceId}::uuid, id, tasting_id, flight_no, judge_id, actor_id, kind, entry_no, device_id, device_seq,
           occurred_at, client_sent_at, clock_offset_ms, is_final, total, payload, decode(hash, 'hex')
    FROM unnest(
      ${column(({ event }) => event.id)}::uuid[], ${column(({ event }) => event.tastingId)}::uuid[],
      ${column(({ event }) => event.flightNo)}::int[], ${column(({ judgeId }) => judgeId)}::uuid[],
      ${column(({ actorId }) => actorId)}::uuid[], ${column(({ event }) => event.kind)}::text[],
      ${column(({ event }) => (event.kind === "sheet" ? event.entryNo : null))}::int[],
      ${column(({ event }) => event.deviceId)}::uuid[], ${column(({ event }) => event.deviceSeq)}::bigint[],
      ${column(({ event }) => event.occurredAt)}::timestamptz[], ${column(({ sentAt }) => sentAt)}::timestamptz[],
      ${column(({ clockOffsetMs }) => clockOffsetMs)}::bigint[],
      ${column(({ event }) => String(event.isFinal))}::boolean[],
      ${column(({ event }) => (event.kind === "sheet" ? sheetTotal(event.payload) : null))}::numeric[],
      ${column(({ event }) => JSON.stringify(event.payload))}::jsonb[],
      ${column(({ hash }) => Buffer.from(hash).toString("hex"))}::text[]
    ) AS r (id, tasting_id, flight_no, judge_id, actor_id, kind, entry_no, device_id, device_seq, occurred_at,
            client_sent_at, clock_offset_ms, is_final, total, payload, hash)
    ON CONFLICT DO NOTHING
    RETURNING id)
    SELECT string_agg(id::text, ' ') AS ids FROM stored`;
  const isStored = new Set(stored?.ids?.split(" ") ?? []);
  const kept = await keptHashes(
    tx,
    spaceId,
    sheets.map(({ event }) => event.id).filter((id) => !isStored.has(id)),
  );
  return rows.map(({ event: { id }, hash }) => fateOf(id, { isStored: isStored.has(id), there: kept.get(id), hash }));
}

/** What tells a repeated delivery from another event under the same identifier. */
function hashed({ event, judgeId, actorId }: NewSheet): object {
  return { ...event, judgeId, actorId };
}

async function keptHashes(
  tx: SpaceTransaction,
  spaceId: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, Uint8Array>> {
  if (ids.length === 0) return new Map();
  const rows = await tx.tastingEvent.findMany({
    where: { spaceId, id: { in: [...ids] } },
    select: { id: true, payloadHash: true },
  });
  return new Map(rows.map(({ id, payloadHash }) => [id, payloadHash]));
}

function fateOf(
  id: string,
  known: { readonly isStored: boolean; readonly there: Uint8Array | undefined; readonly hash: Uint8Array },
): SheetFate {
  if (known.isStored) return { id, fate: "stored" };
  if (known.there !== undefined && sameBytes(known.there, known.hash)) return { id, fate: "duplicate" };
  const reason =
    known.there === undefined
      ? "This device has already used that number for another sheet; nothing was changed."
      : "Another sheet with this identifier is there already; nothing was changed.";
  return { id, fate: "rejected", reason, isSequenceTaken: known.there === undefined };
}
