import "server-only";
import { NOBODY } from "../nobody";
import { acrossServers, inSpace } from "../db";
import { MADE_WITH } from "./made-with";
import { remakeSummary } from "./remake";
import { noteError } from "../note-error";

/** A brew whose sensors send all the time is not made anew at every reading; who wants to see it does not wait for this. */
const REST_S = 30;
const MOST_AT_ONCE = 50;

/** So many places are told at once; what is left is told the next time. */
const MOST_PLACES = 1000;

/** The spaces in which something has been stale for a while, whichever server they are on: one statement a server. */
export async function spacesWithStale(restS: number = REST_S): Promise<readonly string[]> {
  const found = await acrossServers(
    (client) => client.$queryRaw<{ id: string }[]>`
      SELECT id::text FROM spaces_with_stale_brews(${MADE_WITH}, ${restS}::float8, ${MOST_PLACES}::int) AS id`,
  );
  return found.map(({ id }) => id);
}

/**
 * Makes anew what has been stale for a while in a space, and says how much of it was made here. Any number of processes
 * may do so at once: each brew is made by one of them, and the others pass it over.
 */
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
  return remakeEach(
    spaceId,
    stale.map(({ id }) => id),
    { isShared: true },
  );
}

/**
 * Makes summaries anew, one after the other, and says how many. One brew that cannot be read does not keep the others
 * waiting.
 */
export async function remakeEach(
  spaceId: string,
  brewIds: readonly string[],
  { isShared }: { readonly isShared: boolean } = { isShared: false },
): Promise<number> {
  let made = 0;
  for (const id of brewIds) {
    const wasMade = await remakeSummary(spaceId, id, { isShared }).catch((error: unknown) => {
      noteError("a summary was not made", error, { brew: id });
      return false;
    });
    if (wasMade) made++;
  }
  return made;
}
