import "server-only";
import { setTimeout as delay } from "node:timers/promises";
import { AppError } from "../app-error";
import { noteError } from "../note-error";
import { seenSoFar, type Seen } from "../recent-write";
import type { DatabaseClient } from "./client";
import { NOWHERE } from "../publications/nowhere";
import { inClient, inPlace, onServer, type Reader, type SpaceWork } from "./place";
import { hasFurtherServers, replica, serverNumbers } from "./servers";

/** For so long a reader waits for the standby to have what they wrote themselves. */
const PATIENCE_MS = 50;
const LOOK_AGAIN_MS = 5;
/** A standby that failed is left alone for a while, so that no page waits for it again and again. */
const REST_MS = 5000;

let restsUntil = 0;

/**
 * Reads from the standby, where there is one and it has everything that this reader wrote; else from the server that the
 * space is on. For work that only reads and may be a moment behind what others write.
 */
export async function readSpace<R>(reader: Reader, work: SpaceWork<R>, seen?: Seen): Promise<R> {
  const client = hasFurtherServers() || Date.now() < restsUntil ? null : replica();
  if (client === null) return inPlace(reader, work);
  const wanted = seen ?? (await seenSoFar());
  if (wanted === "all") return inPlace(reader, work);
  const answer = await askReplica(client, { reader, wanted }, work);
  return answer === null ? inPlace(reader, work) : answer.result;
}

/** null where it is behind, or does not answer. */
async function askReplica<R>(
  client: DatabaseClient,
  { reader, wanted }: { readonly reader: Reader; readonly wanted: Exclude<Seen, "all"> },
  work: SpaceWork<R>,
): Promise<{ readonly result: R } | null> {
  try {
    if (wanted !== "nothing" && !(await hasReplayed(client, wanted.lsn))) return null;
    return { result: await inClient(client, reader, work) };
  } catch (error) {
    if (error instanceof AppError) throw error;
    // It is away, or took back a row that this was reading; the other server answers.
    noteError("the standby did not answer", error);
    restsUntil = Date.now() + REST_MS;
    return null;
  }
}

async function hasReplayed(client: DatabaseClient, lsn: string): Promise<boolean> {
  const until = Date.now() + PATIENCE_MS;
  for (;;) {
    const [found] = await client.$queryRaw<{ there: boolean | null }[]>`
      SELECT pg_last_wal_replay_lsn() >= ${lsn}::text::pg_lsn AS there`;
    if (found?.there === true) return true;
    if (Date.now() >= until) return false;
    await delay(LOOK_AGAIN_MS);
  }
}

/**
 * Reads what is public. It is on the server of the club that published it, and nothing at an address says which that is: they are
 * asked one after the other, until one has something.
 */
export async function readPublic<R>(work: SpaceWork<R | null>, seen?: Seen): Promise<R | null> {
  const reader = { spaceId: NOWHERE, userId: NOWHERE };
  if (!hasFurtherServers()) return readSpace(reader, work, seen);
  for (const number of serverNumbers()) {
    const found = await onServer(number, reader, work);
    if (found !== null) return found;
  }
  return null;
}
