import type { Client } from "pg";
import type { Fingerprint } from "./manifest";

/** Never copied: the throttle counts seconds, and after a crash of the server it is empty as well. */
const UNLOGGED = "u";

export interface Table {
  readonly name: string;
  readonly columns: readonly Column[];
}

interface Column {
  readonly name: string;
  readonly type: string;
}

/** Times, numbers and bytes are written the same on every server. */
export async function settleForms(client: Client): Promise<void> {
  await client.query(
    "SET datestyle = ISO; SET intervalstyle = postgres; SET timezone = UTC; SET extra_float_digits = 1; SET bytea_output = hex",
  );
}

/** Every table with the columns that are stored and not computed, so that each refers only to those before it. */
export async function readTables(client: Client): Promise<readonly Table[]> {
  const { rows } = await client.query<{ table: string; column: string; type: string }>(
    `SELECT c.relname AS table, a.attname AS column, format_type(a.atttypid, a.atttypmod) AS type
     FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
     WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND NOT c.relispartition
       AND c.relpersistence <> $1 AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = ''
     ORDER BY c.relname, a.attnum`,
    [UNLOGGED],
  );
  const byName = new Map<string, Column[]>();
  for (const { table, column, type } of rows) {
    byName.set(table, [...(byName.get(table) ?? []), { name: column, type }]);
  }
  const { rows: references } = await client.query<{ child: string; parent: string }>(
    `SELECT DISTINCT c.relname AS child, p.relname AS parent
     FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid JOIN pg_class p ON p.oid = k.confrelid
     WHERE k.contype = 'f' AND k.conrelid <> k.confrelid AND c.relnamespace = 'public'::regnamespace`,
  );
  return parentsFirst([...byName.keys()], references).map((name) => ({ name, columns: byName.get(name) ?? [] }));
}

function parentsFirst(
  names: readonly string[],
  references: readonly { readonly child: string; readonly parent: string }[],
): readonly string[] {
  const ordered: string[] = [];
  let rest = names;
  while (rest.length > 0) {
    const free = rest.filter(
      (name) => !references.some(({ child, parent }) => child === name && rest.includes(parent)),
    );
    // Tables that refer to each other in a circle can only do so by references that are looked at in the end.
    const next = free.length === 0 ? rest : free;
    ordered.push(...next);
    rest = rest.filter((name) => !next.includes(name));
  }
  return ordered;
}

/** How many rows each table has, and what they hold, independent of their order. */
export async function fingerprints(
  client: Client,
  tables: readonly Table[],
): Promise<Readonly<Record<string, Fingerprint>>> {
  const found: Record<string, Fingerprint> = {};
  for (const { name, columns } of tables) {
    const list = columns.map((column) => quoted(column.name)).join(", ");
    const { rows } = await client.query<Fingerprint>(
      `SELECT count(*)::text AS rows,
              coalesce(sum(('x' || left(encode(sha256(convert_to(t::text, 'UTF8')), 'hex'), 16))::bit(64)::bigint::numeric),
                       0)::text AS content
       FROM (SELECT ${list} FROM ${quoted(name)}) t`,
    );
    found[name] = rows[0] ?? { rows: "0", content: "0" };
  }
  return found;
}

/** Where each sequence that has been used stands. */
export async function readSequences(client: Client): Promise<Readonly<Record<string, string>>> {
  const { rows } = await client.query<{ name: string; last: string }>(
    `SELECT sequencename AS name, last_value::text AS last FROM pg_sequences
     WHERE schemaname = 'public' AND last_value IS NOT NULL ORDER BY sequencename`,
  );
  return Object.fromEntries(rows.map(({ name, last }) => [name, last]));
}

/** A name for a statement; names come from the catalogue or a manifest whose sums were right. */
export function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}
