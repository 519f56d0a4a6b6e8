import "server-only";
import { Prisma } from "../../../prisma/generated/client";
import type { SpaceTransaction } from "./client";

/** The name of a table for a statement; it comes from a list of this program, never from a request. */
function tableSql(table: string): Prisma.Sql {
  if (!/^[a-z_]{1,60}$/.test(table)) throw new Error(`${table} is no name of a table`);
  return Prisma.raw(`"${table}"`);
}

/** The name of a column; those of a file are held against the table's own before. */
function columnSql(column: string): Prisma.Sql {
  if (!/^[a-z_0-9]{1,60}$/.test(column)) throw new Error(`${column} is no name of a column`);
  return Prisma.raw(`"${column}"`);
}

/** All rows of several tables of one space as JSON, seen by one statement. */
export async function rowsOfSpace(
  tx: SpaceTransaction,
  spaceId: string,
  tables: readonly string[],
): Promise<readonly { readonly part: string; readonly row: unknown }[]> {
  // Times are written in one zone, whatever the server's own is.
  await tx.$queryRaw`SELECT set_config('timezone', 'UTC', true)`;
  const selects = tables.map(
    (table) => Prisma.sql`SELECT ${table}::text AS part, to_jsonb(t) - 'space_id' AS row
      FROM ${tableSql(table)} t WHERE t.space_id = ${spaceId}::uuid`,
  );
  return tx.$queryRaw<{ part: string; row: unknown }[]>(Prisma.join(selects, " UNION ALL "));
}

/** The columns of a table that are written. */
export async function columnsOf(tx: SpaceTransaction, table: string): Promise<readonly string[]> {
  const rows = await tx.$queryRaw<{ name: string }[]>`
    SELECT attname::text AS name FROM pg_attribute
    WHERE attrelid = ${table}::regclass AND attnum > 0 AND NOT attisdropped AND attgenerated = ''`;
  return rows.map(({ name }) => name);
}

/**
 * Writes rows that `rowsOfSpace` has read, into a space of which each says that it is. A column that no row names takes
 * its default, so that a file from before there was the column is taken as well.
 */
export async function insertRowsOfSpace(tx: SpaceTransaction, table: string, rows: readonly object[]): Promise<void> {
  const name = tableSql(table);
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))].map(columnSql);
  if (columns.length === 0) return;
  const json = JSON.stringify(rows);
  await tx.$executeRaw`INSERT INTO ${name} (${Prisma.join(columns)}) SELECT ${Prisma.join(columns)}
    FROM jsonb_populate_recordset(NULL::${name}, ${json}::jsonb)`;
}

/** Looks at once at what the database would only look at in the end, so that a refusal is one of this transaction. */
export async function settleConstraints(tx: SpaceTransaction): Promise<void> {
  await tx.$executeRaw`SET CONSTRAINTS ALL IMMEDIATE`;
}

/** Moves rows of a space on to a word of one column, by their id; the rules of the table hold as for anybody. */
export async function moveRowsOfSpace(
  tx: SpaceTransaction,
  spaceId: string,
  {
    table,
    column,
    ids,
    to,
  }: { readonly table: string; readonly column: string; readonly ids: readonly string[]; readonly to: string },
): Promise<void> {
  await tx.$executeRaw`UPDATE ${tableSql(table)} SET ${columnSql(column)} = ${to}
    WHERE space_id = ${spaceId}::uuid AND id = ANY (${ids}::uuid[])`;
}

export interface NamedRow {
  readonly table: string;
  readonly row: unknown;
}

interface NamingOrder {
  readonly spaceId: string;
  readonly userId: string;
  readonly columns: readonly string[];
  /** Tables that are passed over. */
  readonly not: readonly string[];
  /** Tables whose rows belong to a record that names the person: the table, whose part, by which column, who is named. */
  readonly parts: readonly (readonly [table: string, of: string, by: string, person: string])[];
}

/** Rows of one space in whichever table of content they are, that name a person in one of the columns. */
export async function rowsNaming(tx: SpaceTransaction, order: NamingOrder): Promise<readonly NamedRow[]> {
  const { spaceId, userId, columns, not, parts } = order;
  await tx.$queryRaw`SELECT set_config('timezone', 'UTC', true)`;
  const tables = await tx.$queryRaw<{ table: string; columns: string[] }[]>`
    SELECT c.relname::text AS "table", array_agg(a.attname::text ORDER BY a.attnum) AS columns
    FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND c.relrowsecurity
      AND a.attname = ANY (${columns}) AND NOT a.attisdropped AND NOT c.relname = ANY (${not})
      AND EXISTS (SELECT FROM pg_attribute s WHERE s.attrelid = c.oid AND s.attname = 'space_id')
    GROUP BY c.relname ORDER BY c.relname`;
  const found: NamedRow[] = [];
  const add = async (table: string, which: Prisma.Sql): Promise<void> => {
    const rows = await tx.$queryRaw<{ row: unknown }[]>`
      SELECT to_jsonb(t) - 'space_id' AS row FROM ${tableSql(table)} t WHERE t.space_id = ${spaceId}::uuid AND ${which}`;
    found.push(...rows.map(({ row }) => ({ table, row })));
  };
  for (const each of tables) {
    const named = each.columns.map((column) => Prisma.sql`t.${columnSql(column)} = ${userId}::uuid`);
    await add(each.table, Prisma.sql`(${Prisma.join(named, " OR ")})`);
  }
  for (const [table, of, by, person] of parts) {
    await add(
      table,
      Prisma.sql`EXISTS (SELECT FROM ${tableSql(of)} o WHERE o.space_id = t.space_id AND o.id = t.${columnSql(by)}
                         AND o.${columnSql(person)} = ${userId}::uuid)`,
    );
  }
  return found;
}
