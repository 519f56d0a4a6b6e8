import type { Client } from "pg";

/** Tables that stay in one place, or belong to everybody. Any other table is content, also one that forgot its space. */
export const NOT_CONTENT: readonly string[] = [
  "_prisma_migrations",
  "app_user",
  "auth_account",
  "auth_session",
  "one_time_token",
  "space",
  "membership",
  "invite",
  "calendar_token",
  "sensor_token",
  "push_subscription",
  "push_key",
  "rate_limit",
  "audit_log",
  "audit_log_default",
  "public_recipe",
  "public_result",
  "stat_contrib",
  "recipe_lineage",
];

const QUERY = `
  WITH content AS (
    SELECT c.oid, c.relname AS name, c.relrowsecurity AND c.relforcerowsecurity AS is_forced, a.attnum AS space, a.attnotnull
    FROM pg_class c
    LEFT JOIN pg_attribute a ON a.attrelid = c.oid AND a.attname = 'space_id'
    WHERE c.relkind IN ('r', 'p') AND c.relnamespace = $1::regnamespace AND c.relname <> ALL ($2)
  )
  SELECT 'no space_id: ' || name AS fault FROM content WHERE space IS NULL
  UNION ALL
  SELECT 'space_id nullable: ' || name FROM content WHERE NOT attnotnull
  UNION ALL
  SELECT 'key without space_id first: ' || i.indexrelid::regclass::text
  FROM content JOIN pg_index i ON i.indrelid = content.oid
  WHERE (i.indisunique OR i.indisexclusion) AND i.indkey[0] IS DISTINCT FROM content.space
  UNION ALL
  SELECT 'reference not within the space: ' || con.conname
  FROM content
  JOIN pg_constraint con ON con.conrelid = content.oid AND con.contype = 'f'
  JOIN pg_attribute far ON far.attrelid = con.confrelid AND far.attnum = con.confkey[1]
  WHERE con.conkey[1] IS DISTINCT FROM content.space OR far.attname <> 'space_id'
  UNION ALL
  SELECT 'row-level security not forced: ' || name FROM content WHERE NOT is_forced
  UNION ALL
  SELECT 'no policy: ' || name FROM content WHERE NOT EXISTS (SELECT FROM pg_policy p WHERE p.polrelid = content.oid)
  UNION ALL
  SELECT 'sequence in content: ' || name
  FROM content JOIN pg_attribute a ON a.attrelid = content.oid
  LEFT JOIN pg_attrdef d ON d.adrelid = a.attrelid AND d.adnum = a.attnum
  WHERE a.attidentity <> '' OR pg_get_expr(d.adbin, d.adrelid) LIKE 'nextval(%'
  ORDER BY 1`;

/** What in a schema would keep a space from being moved to another database, or from being kept to itself. */
export async function distributionFaults(client: Client, schema: string): Promise<readonly string[]> {
  const { rows } = await client.query<{ fault: string }>(QUERY, [schema, NOT_CONTENT]);
  return rows.map((row) => row.fault);
}
