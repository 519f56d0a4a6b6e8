import type { Client } from "pg";

/** A table whose rows belong to a club, as it is in the catalogue of the database. */
export interface MovedTable {
  readonly name: string;
  /** The column that says whose a row is. */
  readonly owner: string;
  readonly key: readonly string[];
  /** Columns that are written; others the database makes of these. */
  readonly columns: readonly string[];
}

/** What a server says of itself stays there. */
const OF_THE_SERVER = "space_place";

/**
 * Every table that row-level security is forced on: the content of clubs, and what they published. The directory has none and
 * stays where it is. It is asked of the catalogue, so that a table that comes later is moved as well.
 */
export async function movedTables(client: Client): Promise<readonly MovedTable[]> {
  const { rows } = await client.query<MovedTable>(
    `SELECT c.relname AS name,
            (SELECT a.attname FROM pg_attribute a WHERE a.attrelid = c.oid AND a.attname IN ('space_id', 'source_space_id')) AS owner,
            (SELECT array_agg(a.attname::text ORDER BY array_position(i.indkey::int[], a.attnum::int))
             FROM pg_index i JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum = ANY (i.indkey)
             WHERE i.indrelid = c.oid AND i.indisprimary) AS key,
            (SELECT array_agg(a.attname::text ORDER BY a.attnum) FROM pg_attribute a
             WHERE a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = '') AS columns
     FROM pg_class c
     WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND NOT c.relispartition
       AND c.relforcerowsecurity AND c.relname <> $1
     ORDER BY c.relname`,
    [OF_THE_SERVER],
  );
  const keyless = rows.find(({ owner, key }) => (owner as string | null) === null || (key as unknown) === null);
  if (keyless !== undefined) throw new Error(`${keyless.name} cannot be moved: it names no club, or has no key.`);
  return rows;
}

export function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

/** What makes a row of this club one, as text. */
export function keyText({ key }: MovedTable): string {
  return `ROW(${key.map(quoted).join(", ")})::text`;
}
