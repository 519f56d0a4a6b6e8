import pg from "pg";

const RECORD_OF_MIGRATIONS = "_prisma_migrations";

/**
 * Empties every table, as the owner of the schema: the application's own role may not. The triggers that keep the log
 * append-only rest for this one transaction.
 */
export async function emptyDatabase(databaseUrl: string): Promise<void> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    const { rows } = await client.query<{ name: string }>(
      "SELECT quote_ident(tablename) AS name FROM pg_tables WHERE schemaname = 'public' AND tablename <> $1",
      [RECORD_OF_MIGRATIONS],
    );
    const names = rows.map(({ name }) => name);
    await client.query("BEGIN");
    for (const name of names) await client.query(`ALTER TABLE ${name} DISABLE TRIGGER USER`);
    await client.query(`TRUNCATE ${names.join(", ")}`);
    for (const name of names) await client.query(`ALTER TABLE ${name} ENABLE TRIGGER USER`);
    await client.query("COMMIT");
  } finally {
    // Ending in the middle of a transaction rolls it back.
    await client.end();
  }
}
