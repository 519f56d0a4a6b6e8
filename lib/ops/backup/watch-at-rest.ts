import type { Client } from "pg";
import { quoted } from "./tables";

/**
 * Does work as the owner of tables, within a transaction of the caller, while what watches over single writes rests:
 * triggers, and row-level security where it binds the owner too. It is back before the transaction ends; constraints hold
 * throughout, and other sessions wait.
 */
export async function withWatchAtRest(
  client: Client,
  names: readonly string[],
  work: () => Promise<void>,
): Promise<void> {
  const { rows } = await client.query<{ name: string }>(
    `SELECT relname AS name FROM pg_class
     WHERE relnamespace = 'public'::regnamespace AND relforcerowsecurity AND relname = ANY ($1)`,
    [names],
  );
  const forced = rows.map(({ name }) => name);
  for (const name of names) await client.query(`ALTER TABLE ${quoted(name)} DISABLE TRIGGER USER`);
  for (const name of forced) await client.query(`ALTER TABLE ${quoted(name)} NO FORCE ROW LEVEL SECURITY`);
  await work();
  // References that are looked at in the end are looked at now, because a table with some waiting cannot be altered.
  await client.query("SET CONSTRAINTS ALL IMMEDIATE");
  for (const name of forced) await client.query(`ALTER TABLE ${quoted(name)} FORCE ROW LEVEL SECURITY`);
  for (const name of names) await client.query(`ALTER TABLE ${quoted(name)} ENABLE TRIGGER USER`);
}
