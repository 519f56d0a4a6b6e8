import "server-only";
import { NOBODY } from "../nobody";
import { directory, inSpace } from "../db";
import { MADE_WITH } from "./made-with";
import { remakeSummary } from "./remake";
import { noteError } from "../note-error";

/** A brew whose sensors send all the time is not made anew at every reading; who wants to see it does not wait for this. */
const REST_S = 30;
const MOST_AT_ONCE = 50;

/** The spaces with a brew whose summary is stale. Most have none, and are not asked one by one. */
export async function staleSpaces(): Promise<readonly string[]> {
  const rows = await directory.$queryRaw<{ id: string }[]>`
    SELECT stale.id::text FROM spaces_with_stale_summaries(${MADE_WITH}) AS stale (id)
    JOIN space s ON s.id = stale.id AND s.deleted_at IS NULL`;
  return rows.map(({ id }) => id);
}

/** Makes anew what has been stale for a while in a space. Says how many there were. */
export async function remakeStale(spaceId: string, restS: number = REST_S): Promise<number> {
  const stale = await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$queryRaw<{ id: string }[]>`
      SELECT b.id::text FROM brew b LEFT JOIN brew_summary s ON s.space_id = b.space_id AND s.brew_id = b.id
      WHERE b.space_id = ${spaceId}::uuid
        AND (s.brew_id IS NULL OR s.calc_version IS DISTINCT FROM ${MADE_WITH}
             OR (EXISTS (SELECT FROM brew_mark m WHERE m.space_id = b.space_id AND m.brew_id = b.id)
                 AND s.made_at <= now() - make_interval(secs => ${restS}::float8)))
      ORDER BY b.id LIMIT ${MOST_AT_ONCE}`,
  );
  await remakeEach(
    spaceId,
    stale.map(({ id }) => id),
  );
  return stale.length;
}

/** Makes summaries anew, one after the other. One brew that cannot be read does not keep the others waiting. */
export async function remakeEach(spaceId: string, brewIds: readonly string[]): Promise<void> {
  for (const id of brewIds) {
    await remakeSummary(spaceId, id).catch((error: unknown) => {
      noteError("a summary was not made", error, { brew: id });
    });
  }
}
