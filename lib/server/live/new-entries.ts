import "server-only";
import { NOBODY } from "../nobody";
import type { LogEntry } from "@/lib/model/log/log-entry";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { toEntries } from "../log/entries";
import type { EventRow } from "../log/event-row";

const FIRST_ID = "00000000-0000-0000-0000-000000000000";

/**
 * An entry gets its time of receipt before its transaction is committed, and shows after. The database ends a
 * transaction after ten seconds, so whoever looks back twice that far misses nothing.
 */
export const LOOK_BACK_MS = 20_000;
export const MOST_AT_ONCE = 500;

export interface BrewKey {
  readonly spaceId: string;
  readonly brewId: string;
}

/** Where a reader of the log is: when the server received an entry, to the microsecond, and which of that moment. */
export interface Place {
  readonly at: string;
  readonly id: string;
}

export interface NewEntry {
  readonly place: Place;
  /** null: a row that this version of the program does not understand. */
  readonly entry: LogEntry | null;
}

const AT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,6})?Z$/;

/** A place out of a request, as it was told to the client or as an entry says when it was received. */
export function readPlace(text: string | null): Place | null {
  if (text === null || !AT.test(text) || Number.isNaN(Date.parse(text))) return null;
  return { at: text, id: FIRST_ID };
}

export function lookedBack({ at }: Place): Place {
  return { at: new Date(Date.parse(at) - LOOK_BACK_MS).toISOString(), id: FIRST_ID };
}

type PlacedRow = EventRow & { readonly at: string };

/** Entries behind a place, in the order in which they were received; a page of them. */
export async function entriesBehind({ spaceId, brewId }: BrewKey, { at, id }: Place): Promise<readonly NewEntry[]> {
  const rows = await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$queryRaw<PlacedRow[]>`
      SELECT id::text, brew_id::text AS "brewId", device_id::text AS "deviceId", device_seq AS "deviceSeq",
             actor_id::text AS "actorId", kind, value, target_id::text AS "targetId", payload,
             occurred_at AS "occurredAt", received_at AS "receivedAt", clock_offset_ms AS "clockOffsetMs",
             to_char(received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"') AS at
      FROM brew_event
      WHERE space_id = ${spaceId}::uuid AND brew_id = ${brewId}::uuid
        AND (received_at, id) > (${at}::timestamptz, ${id}::uuid)
      ORDER BY received_at, id
      LIMIT ${MOST_AT_ONCE}`,
  );
  if (rows.length === 0) return [];
  const reader = { spaceId, userId: NOBODY };
  const nameOf = await displayNames(
    reader,
    rows.map(({ actorId }) => actorId),
  );
  return rows.map((row) => {
    const [entry = null] = toEntries([row], nameOf);
    return { place: { at: row.at, id: row.id }, entry };
  });
}

/** How many entries there are between two places, the second one included. */
export async function countBetween({ spaceId, brewId }: BrewKey, from: Place, to: Place): Promise<number> {
  const [row] = await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$queryRaw<{ n: number }[]>`
      SELECT count(*)::int AS n FROM brew_event
      WHERE space_id = ${spaceId}::uuid AND brew_id = ${brewId}::uuid
        AND (received_at, id) > (${from.at}::timestamptz, ${from.id}::uuid)
        AND (received_at, id) <= (${to.at}::timestamptz, ${to.id}::uuid)`,
  );
  return row?.n ?? 0;
}

/** The present, by the clock that entries are received by. */
export async function presentPlace(spaceId: string): Promise<Place> {
  const [row] = await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$queryRaw<{ at: string }[]>`
      SELECT to_char(clock_timestamp() AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"') AS at`,
  );
  if (row === undefined) throw new Error("the database told no time");
  return { at: row.at, id: FIRST_ID };
}
