import "server-only";
import { environment } from "../environment";
import { openClient, type DatabaseClient } from "./client";
import type { PoolOrder } from "./pool";

/** The server of the directory and of what is public; further ones hold the content of some spaces. */
export const PRIMARY = 0;

type Name = number | "replica";

// A development server loads this file again after each change; the connections stay, on the global object.
const kept = globalThis as typeof globalThis & { gylebookClients?: Map<Name, DatabaseClient> };
const clients = (kept.gylebookClients ??= new Map());

function clientCalled(name: Name, order: () => PoolOrder): DatabaseClient {
  const known = clients.get(name);
  if (known !== undefined) return known;
  const opened = openClient(order);
  clients.set(name, opened);
  return opened;
}

// Read once: every unit of work asks whether there are any.
let known: ReadonlyMap<number, string> | null = null;

function further(): ReadonlyMap<number, string> {
  known ??= environment.furtherDatabases;
  return known;
}

export function server(number: number): DatabaseClient {
  return clientCalled(number, () => ({ address: addressOf(number), isPooled: environment.databaseDirectUrl !== null }));
}

function addressOf(number: number): string {
  if (number === PRIMARY) return environment.databaseUrl;
  const address = further().get(number);
  if (address !== undefined) return address;
  throw new Error(`A space is on server ${String(number)}: set DATABASE_URL_${String(number)} to its address.`);
}

/** The hot standby; null where there is none. It is asked without a pooler. */
export function replica(): DatabaseClient | null {
  const address = environment.databaseReplicaUrl;
  return address === null ? null : clientCalled("replica", () => ({ address, isPooled: false }));
}

export function hasFurtherServers(): boolean {
  return further().size > 0;
}

export function serverNumbers(): readonly number[] {
  return [PRIMARY, ...further().keys()];
}

/** Asks every server in turn, for work that looks for its spaces by itself. */
export async function acrossServers<R>(
  ask: (client: Pick<DatabaseClient, "$queryRaw">) => Promise<readonly R[]>,
): Promise<readonly R[]> {
  const found: R[] = [];
  for (const number of serverNumbers()) found.push(...(await ask(server(number))));
  return found;
}
