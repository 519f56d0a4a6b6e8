import "server-only";
import { setTimeout as delay } from "node:timers/promises";
import { AppError } from "../app-error";
import type { DatabaseClient, SpaceTransaction } from "./client";
import { hasFurtherServers, PRIMARY, server } from "./servers";

export interface Reader {
  readonly spaceId: string;
  readonly userId: string;
}

export type SpaceWork<R> = (tx: SpaceTransaction) => Promise<R>;

/** A space that moves is closed for moments; whoever comes meanwhile waits for it. */
const PATIENCE_MS = 8000;
const LOOK_AGAIN_MS = 25;
const MOST_KNOWN = 20_000;

// Where spaces were found; what is out of date is noticed at the door of the server that a space has left.
const known = new Map<string, number>();

/** Runs work on the content of a space, on the server that holds it. */
export function inPlace<R>(reader: Reader, work: SpaceWork<R>): Promise<R> {
  return hasFurtherServers() ? wherever(reader, work) : onServer(PRIMARY, reader, work);
}

/** Runs work on one server, whether the space is there or not. */
export function onServer<R>(number: number, reader: Reader, work: SpaceWork<R>): Promise<R> {
  return inClient(server(number), reader, work);
}

/** The same on any server that is reached. */
export function inClient<R>(client: DatabaseClient, { spaceId, userId }: Reader, work: SpaceWork<R>): Promise<R> {
  return client.$transaction(async (tx) => {
    await tx.$queryRaw`
      SELECT set_config('role', 'gyle_app', true),
             set_config('app.space_id', ${spaceId}, true),
             set_config('app.user_id', ${userId}, true)`;
    return work(tx);
  });
}

async function wherever<R>(reader: Reader, work: SpaceWork<R>): Promise<R> {
  const until = Date.now() + PATIENCE_MS;
  while (Date.now() < until) {
    const entered = await enter(await placeOf(reader.spaceId), reader, work);
    if (entered !== null) return entered.result;
    // Nothing was done yet, so that it is done elsewhere, or a moment later, is the same to whoever asked.
    known.delete(reader.spaceId);
    await delay(LOOK_AGAIN_MS);
  }
  throw new AppError("BUSY", "This club is being moved to another server. Try again in a minute.");
}

/** null where the space is not, or not any more, or for moments not open. */
function enter<R>(number: number, reader: Reader, work: SpaceWork<R>): Promise<{ readonly result: R } | null> {
  return server(number).$transaction(async (tx) => {
    const [found] = await tx.$queryRaw<{ place: string }[]>`
      SELECT enter_space(${reader.spaceId}::uuid, ${reader.userId}::uuid) AS place`;
    return found?.place === "here" ? { result: await work(tx) } : null;
  });
}

async function placeOf(spaceId: string): Promise<number> {
  const place = known.get(spaceId);
  if (place !== undefined) return place;
  const space = await server(PRIMARY).space.findUnique({ where: { id: spaceId }, select: { shard: true } });
  // What belongs to no space is in the commons, beside the directory.
  const found = space?.shard ?? PRIMARY;
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(spaceId, found);
  return found;
}
