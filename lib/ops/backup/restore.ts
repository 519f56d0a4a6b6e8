import { Client } from "pg";
import { applyMigrations } from "../apply-migrations";
import { Refusal } from "../refusal.mjs";
import { loadDump, requireProgram } from "./dump-format";
import { readManifest, type BackupManifest, type Fingerprint } from "./manifest";
import { loadPhotos } from "./photos";
import { loadRows } from "./rows-format";
import { fingerprints, quoted, readSequences, readTables, settleForms, type Table } from "./tables";
import { withWatchAtRest } from "./watch-at-rest";

const RECORD_OF_MIGRATIONS = "_prisma_migrations";

export interface RestoreOrder {
  /** For the owner of the database, as the service itself has it. */
  readonly databaseUrl: string;
  /** One backup. */
  readonly folder: string;
  readonly migrations: string;
}

/** Restores a whole backup into an empty database and compares every table with what was backed up. */
export async function restore({ databaseUrl, folder, migrations }: RestoreOrder): Promise<BackupManifest> {
  const manifest = await readManifest(folder);
  const client = new Client({ connectionString: databaseUrl, connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    await settleForms(client);
    await requireEmpty(client, manifest.database);
    // First, because the same photos again change nothing, and so a restore that fails can be tried again.
    await loadPhotos(manifest.photos, folder);
    if (manifest.database === "dump") {
      await loadDump(databaseUrl, await requireProgram("pg_restore", await majorOf(client)), folder);
      await inTransaction(client, () => compare(client, manifest));
    } else {
      await applyMigrations({ databaseUrl, folder: migrations, names: manifest.migrations });
      await inTransaction(client, async () => {
        await client.query(`DELETE FROM ${RECORD_OF_MIGRATIONS}`);
        await loadRows(client, await requireTables(client, manifest), folder);
        for (const [name, last] of Object.entries(manifest.sequences)) {
          await client.query("SELECT setval($1::regclass, $2::bigint)", [quoted(name), last]);
        }
        // Before the transaction is confirmed: what does not compare is not there.
        await compare(client, manifest);
      });
    }
  } finally {
    await client.end();
  }
  return manifest;
}

async function inTransaction(client: Client, work: () => Promise<void>): Promise<void> {
  await client.query("BEGIN");
  try {
    await work();
    await client.query("COMMIT");
  } catch (error) {
    await client.query("ROLLBACK");
    throw error;
  }
}

/** Rows are loaded into tables that the migrations make; a dump brings its own. Neither is ever mixed with others. */
async function requireEmpty(client: Client, format: BackupManifest["database"]): Promise<void> {
  const tables = await readTables(client);
  if (tables.length === 0) return;
  if (format === "dump") {
    throw new Refusal("The database has tables already; a dump is restored into one without any. Nothing was changed.");
  }
  const filled = await firstWithRows(client, tables);
  if (filled === null) return;
  throw new Refusal(
    `The database is not empty: ${filled} has rows. A backup is restored into an empty one only; nothing was changed.`,
  );
}

/** The first table with rows, or null. The directory has no row-level security, and without it there is no content. */
async function firstWithRows(client: Client, tables: readonly Table[]): Promise<string | null> {
  for (const { name } of tables) {
    if (name === RECORD_OF_MIGRATIONS) continue;
    const { rowCount } = await client.query(`SELECT FROM ${quoted(name)} LIMIT 1`);
    if (rowCount !== 0) return name;
  }
  return null;
}

async function majorOf(client: Client): Promise<number> {
  const { rows } = await client.query<{ number: number }>(
    "SELECT current_setting('server_version_num')::int AS number",
  );
  return Math.floor((rows[0]?.number ?? 0) / 10_000);
}

async function requireTables(client: Client, manifest: BackupManifest): Promise<readonly Table[]> {
  const tables = await readTables(client);
  const [here, there] = [tables.map(({ name }) => name).sort(), Object.keys(manifest.tables).sort()];
  if (here.join() === there.join()) return tables;
  throw new Refusal(
    "The database has other tables than the backup: restore into a database without any. Nothing was restored.",
  );
}

async function compare(client: Client, manifest: BackupManifest): Promise<void> {
  const tables = await readTables(client);
  let found: Readonly<Record<string, Fingerprint>> = {};
  const names = tables.map(({ name }) => name);
  await withWatchAtRest(client, names, async () => {
    found = await fingerprints(client, tables);
  });
  const different = Object.entries(manifest.tables).flatMap(([name, expected]) => {
    const got: Fingerprint | undefined = found[name];
    if (got?.rows === expected.rows && got.content === expected.content) return [];
    return [`${name} (${expected.rows} rows backed up, ${got?.rows ?? "none"} restored)`];
  });
  const sequences = await readSequences(client);
  const moved = Object.entries(manifest.sequences).filter(([name, last]) => sequences[name] !== last);
  const wrong = [...different, ...moved.map(([name]) => `the sequence ${name}`)];
  if (wrong.length > 0) throw new Refusal(`What was restored is not what was backed up: ${wrong.join(", ")}.`);
}
