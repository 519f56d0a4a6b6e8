import type { Client } from "pg";
import { differing, fingerprints, rowHashes } from "./difference";
import { keyText, quoted, type MovedTable } from "./tables";

const AT_ONCE = 500;

export interface Servers {
  readonly from: Client;
  readonly to: Client;
}

interface Copied {
  /** Rows that were not the same. */
  readonly changed: number;
  /** The tables that they were in. */
  readonly tables: readonly MovedTable[];
  /** All rows of the club, where it comes from. */
  readonly rows: number;
}

/** Makes the rows of a club on the second server those of the first, and says how many it changed. */
export async function copyDifference(
  servers: Servers,
  tables: readonly MovedTable[],
  spaceId: string,
): Promise<Copied> {
  const [there, here] = await Promise.all([
    fingerprints(servers.from, tables, spaceId),
    fingerprints(servers.to, tables, spaceId),
  ]);
  const parts = tables.map((table) => ({ table, buckets: differing(there(table), here(table)) }));
  const different = parts.filter(({ buckets }) => buckets.length > 0);
  let changed = 0;
  for (const { table, buckets } of different) changed += await copyParts(servers, table, { spaceId, buckets });
  const rows = tables.reduce((sum, table) => sum + there(table).rows, 0);
  return { changed, tables: different.map(({ table }) => table), rows };
}

async function copyParts(
  servers: Servers,
  table: MovedTable,
  a: { readonly spaceId: string; readonly buckets: readonly number[] },
): Promise<number> {
  const { spaceId } = a;
  const wanted = await rowHashes(servers.from, table, a);
  const present = await rowHashes(servers.to, table, a);
  const stale = [...present].flatMap(([key, hash]) => (wanted.get(key) === hash ? [] : [key]));
  const missing = [...wanted].flatMap(([key, hash]) => (present.get(key) === hash ? [] : [key]));
  for (const keys of portions(stale)) await removeRows(servers.to, table, { spaceId, keys });
  for (const keys of portions(missing)) await copyRows(servers, table, { spaceId, keys });
  return new Set([...stale, ...missing]).size;
}

function portions<T>(all: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / AT_ONCE) }, (_, at) =>
    all.slice(at * AT_ONCE, (at + 1) * AT_ONCE),
  );
}

interface Portion {
  readonly spaceId: string;
  readonly keys: readonly string[];
}

async function removeRows(client: Client, table: MovedTable, { spaceId, keys }: Portion): Promise<void> {
  await client.query(
    `DELETE FROM ${quoted(table.name)} WHERE ${quoted(table.owner)} = $1 AND ${keyText(table)} = ANY ($2)`,
    [spaceId, keys],
  );
}

async function copyRows({ from, to }: Servers, table: MovedTable, { spaceId, keys }: Portion): Promise<void> {
  const name = quoted(table.name);
  const columns = table.columns.map(quoted).join(", ");
  // As one text, which the driver does not read: numbers stay what they are.
  const { rows } = await from.query<{ all: string | null }>(
    `SELECT jsonb_agg(to_jsonb(t))::text AS all FROM ${name} t
     WHERE ${quoted(table.owner)} = $1 AND ${keyText(table)} = ANY ($2)`,
    [spaceId, keys],
  );
  await to.query(
    `INSERT INTO ${name} (${columns}) OVERRIDING SYSTEM VALUE
     SELECT ${columns} FROM jsonb_populate_recordset(NULL::${name}, $1::jsonb)`,
    [rows[0]?.all ?? "[]"],
  );
}
