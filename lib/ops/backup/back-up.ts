import { mkdir, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import { Client } from "pg";
import { Refusal } from "../refusal.mjs";
import { findProgram, requireProgram, writeDump } from "./dump-format";
import { listBackups, nameOfBackup, rotate } from "./kept-backups";
import { writeManifest, type BackupManifest } from "./manifest";
import { copyPhotos, readPhotos } from "./photos";
import { writeRows } from "./rows-format";
import { fingerprints, readSequences, readTables, settleForms } from "./tables";

export interface BackupOrder {
  /** For somebody who may read every row: row-level security also binds the owner of the tables. */
  readonly databaseUrl: string;
  /** Holds the backups, a folder each. */
  readonly folder: string;
  readonly keep: number;
  /** PostgreSQL's own format where a fitting pg_dump is installed, if nothing is said. */
  readonly format?: BackupManifest["database"] | undefined;
  readonly now: Date;
}

export interface BackupMade {
  readonly path: string;
  readonly sum: string;
  readonly format: BackupManifest["database"];
  readonly tables: number;
  readonly rows: number;
  readonly photos: number;
  readonly missingPhotos: number;
  readonly removed: readonly string[];
}

/** Copies the database, as it is at one moment and while it is used, and the photos that it names. */
export async function backUp(order: BackupOrder): Promise<BackupMade> {
  const path = join(order.folder, nameOfBackup(order.now));
  const unfinished = `${path}.unfinished`;
  await mkdir(unfinished, { recursive: true, mode: 0o700 });
  const client = new Client({ connectionString: order.databaseUrl, connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    const before = (await listBackups(order.folder)).at(-1);
    const manifest = await writeFiles(
      client,
      order,
      unfinished,
      before === undefined ? null : join(order.folder, before),
    );
    const sum = await writeManifest(unfinished, manifest);
    // A folder with the name of a backup is a whole one.
    await rename(unfinished, path);
    const rows = Object.values(manifest.tables).reduce((total, table) => total + Number(table.rows), 0);
    return {
      path,
      sum,
      format: manifest.database,
      tables: Object.keys(manifest.tables).length,
      rows,
      photos: manifest.photos.length,
      missingPhotos: manifest.missingPhotos,
      removed: await rotate(order.folder, order.keep),
    };
  } catch (error) {
    await rm(unfinished, { recursive: true, force: true });
    throw error;
  } finally {
    await client.end();
  }
}

async function writeFiles(
  client: Client,
  { databaseUrl, format, now }: BackupOrder,
  folder: string,
  before: string | null,
): Promise<Omit<BackupManifest, "format" | "version">> {
  await settleForms(client);
  await requireReader(client);
  const { major, server } = await readServer(client);
  await client.query("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
  const tables = await readTables(client);
  const found = await fingerprints(client, tables);
  const program = format === "dump" ? await requireProgram("pg_dump", major) : await findProgram("pg_dump", major);
  const chosen = format ?? (program === null ? "rows" : "dump");
  if (chosen === "dump" && program !== null) {
    const { rows } = await client.query<{ snapshot: string }>("SELECT pg_export_snapshot() AS snapshot");
    await writeDump(databaseUrl, program, rows[0]?.snapshot ?? "", folder);
  } else {
    await writeRows(client, tables, folder);
  }
  const { rows: applied } = await client.query<{ name: string }>(
    "SELECT migration_name AS name FROM _prisma_migrations WHERE finished_at IS NOT NULL ORDER BY migration_name",
  );
  const sequences = await readSequences(client);
  const wanted = await readPhotos(client);
  await client.query("COMMIT");
  const { photos, missing } = await copyPhotos(wanted, folder, before);
  const migrations = applied.map(({ name }) => name);
  const rest = { server, migrations, tables: { ...found }, sequences: { ...sequences } };
  return { madeAt: now.toISOString(), database: chosen, ...rest, photos: [...photos], missingPhotos: missing };
}

async function readServer(client: Client): Promise<{ readonly major: number; readonly server: string }> {
  const { rows } = await client.query<{ number: number; server: string }>(
    "SELECT current_setting('server_version_num')::int AS number, current_setting('server_version') AS server",
  );
  return { major: Math.floor((rows[0]?.number ?? 0) / 10_000), server: rows[0]?.server ?? "" };
}

/** Without the right to read past row-level security a backup would be of nothing, and look like one. */
async function requireReader(client: Client): Promise<void> {
  const { rows } = await client.query<{ name: string; may: boolean }>(
    "SELECT rolname AS name, rolsuper OR rolbypassrls AS may FROM pg_roles WHERE rolname = current_user",
  );
  if (rows[0]?.may === true) return;
  throw new Refusal(
    `The database user ${rows[0]?.name ?? ""} sees no content past row-level security, so it cannot back it up. Let an ` +
      "administrator run CREATE ROLE gylebook_backup LOGIN BYPASSRLS PASSWORD '…'; GRANT pg_read_all_data TO " +
      "gylebook_backup; and set BACKUP_DATABASE_URL to its address.",
  );
}
