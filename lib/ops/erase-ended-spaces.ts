import { Client } from "pg";
import { blobsOf } from "@/lib/server/blobs/open-blobs";
import { quoted, readTables } from "./backup/tables";
import { withWatchAtRest } from "./backup/watch-at-rest";

/**
 * Removes the content of spaces that ended with the account of their last member: rows and photos. The application's own
 * role can take nothing out of a log, so the owner of the database does it, one space a transaction.
 */
export async function eraseEndedSpaces(databaseUrl: string): Promise<number> {
  const client = new Client({ connectionString: databaseUrl, connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    const { rows } = await client.query<{ id: string }>(
      "SELECT id::text FROM space WHERE deleted_at IS NOT NULL AND erased_at IS NULL ORDER BY deleted_at",
    );
    for (const { id } of rows) {
      const blobs = blobsOf(id);
      // First, because a space whose photos are not all gone is not noted as erased, and so is tried again.
      for (const key of await blobs.list()) await blobs.delete(key);
      await eraseRows(client, id);
    }
    return rows.length;
  } finally {
    await client.end();
  }
}

async function eraseRows(client: Client, spaceId: string): Promise<void> {
  const names = await contentTables(client);
  await client.query("BEGIN");
  try {
    // Other sessions wait for these locks, so that they are not waited for long.
    await client.query("SET LOCAL lock_timeout = '5s'");
    await withWatchAtRest(client, names, async () => {
      for (const name of names) await client.query(`DELETE FROM ${quoted(name)} WHERE space_id = $1`, [spaceId]);
      await client.query("UPDATE space SET erased_at = now() WHERE id = $1", [spaceId]);
    });
    await client.query("COMMIT");
  } catch (error) {
    await client.query("ROLLBACK");
    throw error;
  }
}

/** Content has row-level security by space; whatever refers to another table comes before it. */
async function contentTables(client: Client): Promise<readonly string[]> {
  const { rows } = await client.query<{ name: string }>(
    `SELECT c.relname AS name FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
     WHERE c.relnamespace = 'public'::regnamespace AND c.relrowsecurity AND a.attname = 'space_id'`,
  );
  const content = new Set(rows.map(({ name }) => name));
  return (await readTables(client))
    .map(({ name }) => name)
    .filter((name) => content.has(name))
    .reverse();
}
