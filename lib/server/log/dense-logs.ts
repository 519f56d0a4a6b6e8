import "server-only";
import type { SpaceTransaction } from "../db";

/** A log of more entries than this has a sensor behind it that reads more often than any curve shows. */
const DENSE = 6000;
/** Of each quantity; more than a chart has points, and than a fit of a fermentation needs. */
const KEPT_READINGS = 2000;

export interface EventsRead {
  /** A condition for the entries; none where all of them are read. */
  readonly where:
    | Record<string, never>
    | { readonly OR: [{ readonly brewId: { readonly notIn: string[] } }, { readonly id: { readonly in: string[] } }] };
  /** How many readings of a brew are not; a brew that is read whole is not in it. */
  readonly leftOut: ReadonlyMap<string, number>;
}

/**
 * Which entries of brews are read for pages, comparisons and fits. All of them, but for a brew whose sensors sent more than
 * anybody looks at: of each quantity that they measured then every so-manyth reading, the first and the last. What people
 * entered, and readings that were corrected, are always read; exports have everything.
 */
export async function eventsRead(
  tx: SpaceTransaction,
  spaceId: string,
  brewIds: readonly string[],
): Promise<EventsRead> {
  const dense = await tx.$queryRaw<{ id: string; count: number }[]>`
    SELECT brew_id::text AS id, count(*)::int AS count FROM brew_event
    WHERE space_id = ${spaceId}::uuid AND brew_id = ANY (${brewIds}::uuid[])
    GROUP BY brew_id HAVING count(*) > ${DENSE}`;
  if (dense.length === 0) return { where: {}, leftOut: new Map() };
  const ids = dense.map(({ id }) => id);
  const kept = await tx.$queryRaw<{ id: string; brewId: string }[]>`
    WITH log AS (
      SELECT e.id, e.brew_id, e.occurred_at, e.target_id, e.payload ->> 'quantity' AS quantity,
             e.device_seq IS NULL AND e.kind IN ('temperature', 'gravity', 'volume', 'duration', 'ph', 'pressure') AS is_sensed
      FROM brew_event e WHERE e.space_id = ${spaceId}::uuid AND e.brew_id = ANY (${ids}::uuid[])
    ), sensed AS (
      SELECT id, brew_id, row_number() OVER (PARTITION BY brew_id, quantity ORDER BY occurred_at, id) AS place,
             count(*) OVER (PARTITION BY brew_id, quantity) AS count
      FROM log WHERE is_sensed
    )
    SELECT id::text, brew_id::text AS "brewId" FROM log WHERE NOT is_sensed
    UNION SELECT target_id::text, brew_id::text FROM log WHERE target_id IS NOT NULL
    UNION SELECT id::text, brew_id::text FROM sensed
      WHERE place = 1 OR place * ${KEPT_READINGS}::bigint / count <> (place - 1) * ${KEPT_READINGS}::bigint / count`;
  const keptOf = (brewId: string): number => kept.filter((each) => each.brewId === brewId).length;
  return {
    where: { OR: [{ brewId: { notIn: ids } }, { id: { in: kept.map(({ id }) => id) } }] },
    leftOut: new Map(dense.map(({ id, count }) => [id, count - keptOf(id)])),
  };
}
