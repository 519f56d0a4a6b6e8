import { createHash, randomUUID } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { Client } from "pg";
import { Umzug, type RunnableMigration, type UmzugStorage } from "umzug";

/** The number that Prisma's own tool locks, so that the two never migrate at the same time. */
const LOCK = 72_707_369;

/** Prisma's table, column for column: `prisma migrate deploy` and `status` work on the same database. */
const CREATE_TABLE = `
  CREATE TABLE IF NOT EXISTS _prisma_migrations (
    id                  varchar(36) PRIMARY KEY,
    checksum            varchar(64) NOT NULL,
    finished_at         timestamptz,
    migration_name      varchar(255) NOT NULL,
    logs                text,
    rolled_back_at      timestamptz,
    started_at          timestamptz NOT NULL DEFAULT now(),
    applied_steps_count integer NOT NULL DEFAULT 0
  )`;

interface MigrationFile {
  readonly name: string;
  readonly sql: string;
  readonly checksum: string;
}

interface Applied {
  readonly migration_name: string;
  readonly checksum: string;
  readonly finished_at: Date | null;
}

export interface MigrationOrder {
  readonly databaseUrl: string;
  /** Holds one folder for each migration, named so that they sort in the order in which they apply. */
  readonly folder: string;
  /** Only these, for a backup that was made before the others; all of them, if nothing is said. */
  readonly names?: readonly string[];
}

/** Applies the migrations that the database does not have yet, each in one transaction, and returns their names. */
export async function applyMigrations({ databaseUrl, folder, names }: MigrationOrder): Promise<readonly string[]> {
  const files = await readMigrations(folder);
  const wanted = names === undefined ? files : names.map((name) => requireFile(files, name));
  const client = new Client({ connectionString: databaseUrl, connectionTimeoutMillis: 10_000 });
  await client.connect().catch((error: unknown) => {
    throw new Error(`The database is not reachable: ${reasonOf(error)}.`, { cause: error });
  });
  try {
    await client.query("SELECT pg_advisory_lock($1)", [LOCK]);
    await client.query(CREATE_TABLE);
    refuseSurprises(files, await readApplied(client));
    const done = await new Umzug({
      migrations: wanted.map((file) => toRunnable(client, file)),
      storage: storageOf(client),
      context: {},
      logger: undefined,
    }).up();
    return done.map((migration) => migration.name);
  } finally {
    await client.end();
  }
}

/** A name with several addresses fails once for each, and the error around them says nothing itself. */
function reasonOf(error: unknown): string {
  const first: unknown = error instanceof AggregateError ? error.errors[0] : error;
  return first instanceof Error ? first.message : String(first);
}

async function readMigrations(folder: string): Promise<readonly MigrationFile[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  return Promise.all(
    names.sort().map(async (name) => {
      const sql = await readFile(join(folder, name, "migration.sql"), "utf8");
      return { name, sql, checksum: createHash("sha256").update(sql).digest("hex") };
    }),
  );
}

function requireFile(files: readonly MigrationFile[], name: string): MigrationFile {
  const file = files.find((each) => each.name === name);
  if (file !== undefined) return file;
  throw new Error(`The migration ${name} is not known to this version of Gylebook: a newer one made it.`);
}

async function readApplied(client: Client): Promise<readonly Applied[]> {
  const { rows } = await client.query<Applied>(
    "SELECT migration_name, checksum, finished_at FROM _prisma_migrations WHERE rolled_back_at IS NULL",
  );
  return rows;
}

/** A database that was made with other files is left alone: what would come of it, nobody has tried. */
function refuseSurprises(files: readonly MigrationFile[], applied: readonly Applied[]): void {
  const checksumOf = new Map(files.map((file) => [file.name, file.checksum]));
  for (const { migration_name: name, checksum, finished_at: finishedAt } of applied) {
    if (!checksumOf.has(name)) {
      throw new Error(`The database has the migration ${name}, which this version of Gylebook does not know.`);
    }
    if (finishedAt === null) {
      throw new Error(`The migration ${name} was begun on this database and not finished; restore a backup.`);
    }
    if (checksumOf.get(name) !== checksum) {
      throw new Error(`The migration ${name} has been changed since this database was made with it; undo the change.`);
    }
  }
}

function toRunnable(client: Client, { name, sql, checksum }: MigrationFile): RunnableMigration<object> {
  return {
    name,
    up: async () => {
      await client.query("BEGIN");
      try {
        await client.query("SET LOCAL lock_timeout = '5s'");
        await client.query(sql);
        await client.query(
          `INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count)
           VALUES ($1, $2, $3, clock_timestamp(), 1)`,
          [randomUUID(), checksum, name],
        );
        await client.query("COMMIT");
      } catch (error) {
        await client.query("ROLLBACK");
        throw error;
      }
    },
  };
}

function storageOf(client: Client): UmzugStorage {
  return {
    executed: async () => (await readApplied(client)).map((row) => row.migration_name),
    // The row is written in the transaction of the migration itself, so that neither stands without the other.
    logMigration: () => Promise.resolve(),
    unlogMigration: () => Promise.reject(new Error("A migration is not taken back; write another one.")),
  };
}
