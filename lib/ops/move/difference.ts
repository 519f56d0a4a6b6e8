import type { Client } from "pg";
import { keyText, quoted, type MovedTable } from "./tables";

/** A part of a table's rows: how many there are, and what they come to. */
interface Bucket {
  readonly name: string;
  readonly bucket: number;
  readonly rows: string;
  readonly content: string;
}

interface Fingerprint {
  readonly rows: number;
  readonly buckets: ReadonlyMap<number, string>;
}

const NOTHING: Fingerprint = { rows: 0, buckets: new Map() };

type Fingerprints = (table: MovedTable) => Fingerprint;

/**
 * The rows of a club in each table, in 256 parts, so that a difference is looked for only where there is one. It is one
 * statement, for a club is closed while it is asked.
 */
export async function fingerprints(
  client: Client,
  tables: readonly MovedTable[],
  spaceId: string,
): Promise<Fingerprints> {
  const each = tables.map(
    (table) => `
      SELECT '${table.name}' AS name, get_byte(decode(md5(k), 'hex'), 0) AS bucket, count(*) AS rows,
             md5(string_agg(h, '' ORDER BY k COLLATE "C")) AS content
      FROM (SELECT ${keyText(table)} AS k, md5(t::text) AS h FROM ${quoted(table.name)} t
            WHERE ${quoted(table.owner)} = $1) hashed
      GROUP BY 2`,
  );
  const { rows } = await client.query<Bucket>(each.join(" UNION ALL "), [spaceId]);
  const found = new Map<string, { rows: number; readonly buckets: Map<number, string> }>();
  for (const { name, bucket, rows: count, content } of rows) {
    const print = found.get(name) ?? { rows: 0, buckets: new Map<number, string>() };
    print.rows += Number(count);
    print.buckets.set(bucket, `${count} ${content}`);
    found.set(name, print);
  }
  return ({ name }) => found.get(name) ?? NOTHING;
}

/** The parts of two that are not the same. */
export function differing(one: Fingerprint, other: Fingerprint): readonly number[] {
  const all = [...new Set([...one.buckets.keys(), ...other.buckets.keys()])];
  return all.filter((bucket) => one.buckets.get(bucket) !== other.buckets.get(bucket));
}

/** Each row of some parts, by its key: what it comes to. */
export async function rowHashes(
  client: Client,
  table: MovedTable,
  a: { readonly spaceId: string; readonly buckets: readonly number[] },
): Promise<ReadonlyMap<string, string>> {
  const { rows } = await client.query<{ k: string; h: string }>(
    `SELECT ${keyText(table)} AS k, md5(t::text) AS h FROM ${quoted(table.name)} t
     WHERE ${quoted(table.owner)} = $1 AND get_byte(decode(md5(${keyText(table)}), 'hex'), 0) = ANY ($2)`,
    [a.spaceId, a.buckets],
  );
  return new Map(rows.map(({ k, h }) => [k, h]));
}
