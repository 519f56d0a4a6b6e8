import { Client } from "pg";
import { Refusal } from "../refusal.mjs";
import { copyDifference, type Servers } from "./copy-rows";
import { closeDoor, keepDoorShut, openDoor, sayGone } from "./door";
import { movedTables, quoted, type MovedTable } from "./tables";

/** Copied again and again while people write, until so little is left that they hardly wait for the rest. */
const MOST_PASSES = 8;
const LITTLE = 200;

interface MoveOrder {
  readonly slug: string;
  readonly to: number;
  /** The address of each server, for an account that may read and write every club's rows (docs/scale.md). */
  readonly addresses: ReadonlyMap<number, string>;
}

interface Moved {
  readonly from: number;
  readonly tables: number;
  readonly rows: number;
  /** Rows that were written while the copy was made. */
  readonly caughtUp: number;
  readonly closedMs: number;
}

/** Moves the content of a club to another server while it is used; null where it is there already. */
export async function moveSpace({ slug, to, addresses }: MoveOrder): Promise<Moved | null> {
  const clients = new Map<number, Client>();
  try {
    for (const [number, address] of addresses) clients.set(number, await connect(address));
    const on = (number: number): Client => {
      const client = clients.get(number);
      if (client !== undefined) return client;
      throw new Refusal(`There is no address for server ${String(number)}.`);
    };
    const space = await findSpace(on(0), slug);
    const route = { directory: on(0), to: on(to), spaceId: space.id };
    if (space.shard === to) {
      await finish({ ...route, others: [...clients.entries()].filter(([number]) => number !== to).map(([, c]) => c) });
      return null;
    }
    const from = on(space.shard);
    const tables = await sameTables(from, on(to));
    return { from: space.shard, ...(await move({ ...route, from, number: to, tables })) };
  } finally {
    for (const client of clients.values()) await client.end();
  }
}

async function connect(address: string): Promise<Client> {
  const client = new Client({ connectionString: address, application_name: "gylebook move" });
  await client.connect();
  // Rows come as they are: what triggers made of them comes along, and references were held where they come from.
  await client.query("SET session_replication_role = replica; SET timezone = 'UTC'; SET row_security = off");
  return client;
}

async function findSpace(directory: Client, slug: string): Promise<{ readonly id: string; readonly shard: number }> {
  const { rows } = await directory.query<{ id: string; shard: number }>("SELECT id, shard FROM space WHERE slug = $1", [
    slug,
  ]);
  if (rows[0] === undefined) throw new Refusal(`There is no club at ${slug}.`);
  return rows[0];
}

async function sameTables(from: Client, to: Client): Promise<readonly MovedTable[]> {
  const [here, there] = [await movedTables(from), await movedTables(to)];
  if (JSON.stringify(here) === JSON.stringify(there)) return here;
  throw new Refusal(
    "The two servers do not have the same tables: run npm run migrate on both first. Nothing was moved.",
  );
}

interface Route {
  readonly directory: Client;
  readonly from: Client;
  readonly to: Client;
  readonly number: number;
  readonly spaceId: string;
  readonly tables: readonly MovedTable[];
}

async function move(route: Route): Promise<Omit<Moved, "from">> {
  const { directory, from, to, number, spaceId, tables } = route;
  await keepDoorShut(to, spaceId);
  await copyDifference(route, tables, spaceId);
  let caughtUp = 0;
  for (let pass = 0, changed = Infinity; pass < MOST_PASSES && changed > LITTLE; pass++) {
    ({ changed } = await copyDifference(route, tables, spaceId));
    caughtUp += changed;
  }
  const closedAt = performance.now();
  await closeDoor(from, spaceId);
  let rows: number;
  try {
    const last = await copyDifference(route, tables, spaceId);
    caughtUp += last.changed;
    ({ rows } = last);
    await requireEqual(route, last.tables, spaceId);
    await directory.query("UPDATE space SET shard = $2 WHERE id = $1", [spaceId, number]);
  } catch (error) {
    await openDoor(from, spaceId);
    throw error;
  }
  // From here on the directory leads to the new place, and only there is a door.
  await openDoor(to, spaceId);
  const closedMs = performance.now() - closedAt;
  await sayGone(from, spaceId);
  await removeAll(from, tables, spaceId);
  return { tables: tables.length, rows, caughtUp, closedMs };
}

/** Every table was just compared by the number of its rows and by their content; those that had to be changed are again. */
async function requireEqual(servers: Servers, tables: readonly MovedTable[], spaceId: string): Promise<void> {
  const { tables: different } = await copyDifference(servers, tables, spaceId);
  if (different.length === 0) return;
  const names = different.map(({ name }) => name).join(", ");
  throw new Error(`${names}: not the same on both servers; the club stays where it was.`);
}

async function removeAll(client: Client, tables: readonly MovedTable[], spaceId: string): Promise<void> {
  for (const { name, owner } of tables) {
    await client.query(`DELETE FROM ${quoted(name)} WHERE ${quoted(owner)} = $1`, [spaceId]);
  }
}

/** What a move left undone that was cut off after the directory led to the new place. */
async function finish(a: { readonly to: Client; readonly others: readonly Client[]; readonly spaceId: string }) {
  await openDoor(a.to, a.spaceId);
  for (const client of a.others) {
    await sayGone(client, a.spaceId);
    await removeAll(client, await movedTables(client), a.spaceId);
  }
}
