/**
 * Fills a database with a federation of clubs by COPY: each is the demo club with other identifiers, addresses and names,
 * a hundred recipes, fifty members and a thousand readings. All keys, references and checks hold while it is written; only
 * our own triggers rest, because what they make is copied as well.
 */
import { chmod, mkdtemp, open, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { DEMO_CLUB } from "@/seed-demo/people";
import { sourceTables, type SourceTable } from "./copies";
import { readTemplate } from "./template";

const CHUNK = 1 << 20;

export interface Filled {
  readonly rows: Readonly<Record<string, number>>;
  readonly bytes: number;
  readonly seconds: number;
}

/** Writes the clubs with these numbers. The address is one of an administrator, because COPY reads a file of the server. */
export async function fillFederation(a: {
  readonly superuserUrl: string;
  readonly clubs: readonly number[];
  readonly seed: number;
}): Promise<Filled> {
  const begun = performance.now();
  const client = new Client({ connectionString: a.superuserUrl, options: "-c timezone=UTC" });
  await client.connect();
  const folder = await mkdtemp(join(tmpdir(), "gylebook-federation-"));
  try {
    // The database is another user of this machine.
    await chmod(folder, 0o755);
    const tables = sourceTables(await readTemplate(client, DEMO_CLUB.slug), a.seed);
    for (const table of tables) await copyTable({ client, folder, table, clubs: a.clubs });
    await client.query("VACUUM ANALYZE");
    return { ...(await sizeOf(client, tables)), seconds: (performance.now() - begun) / 1000 };
  } finally {
    await client.end();
    await rm(folder, { recursive: true });
  }
}

async function copyTable(a: {
  readonly client: Client;
  readonly folder: string;
  readonly table: SourceTable;
  readonly clubs: readonly number[];
}): Promise<void> {
  const file = join(a.folder, a.table.table);
  await writeLines(file, a.table, a.clubs);
  const name = a.client.escapeIdentifier(a.table.table);
  const columns = a.table.columns.map((column) => a.client.escapeIdentifier(column)).join(", ");
  await a.client.query("BEGIN");
  await a.client.query(`ALTER TABLE ${name} DISABLE TRIGGER USER`);
  await a.client.query(`COPY ${name} (${columns}) FROM ${a.client.escapeLiteral(file)}`);
  await a.client.query("SET CONSTRAINTS ALL IMMEDIATE");
  await a.client.query(`ALTER TABLE ${name} ENABLE TRIGGER USER`);
  await a.client.query("COMMIT");
  await rm(file);
}

async function writeLines(file: string, table: SourceTable, clubs: readonly number[]): Promise<void> {
  const out = await open(file, "w", 0o644);
  let waiting: string[] = [];
  let length = 0;
  const flush = async (): Promise<void> => {
    await out.write(waiting.join(""));
    waiting = [];
    length = 0;
  };
  for (const club of clubs) {
    for (const line of table.linesOf(club)) {
      waiting.push(line);
      length += line.length;
      if (length > CHUNK) await flush();
    }
  }
  await flush();
  await out.close();
}

async function sizeOf(client: Client, tables: readonly SourceTable[]): Promise<Omit<Filled, "seconds">> {
  const rows: Record<string, number> = {};
  for (const { table } of tables) {
    const counted = await client.query<{ n: number }>(
      `SELECT count(*)::int AS n FROM ${client.escapeIdentifier(table)}`,
    );
    rows[table] = counted.rows[0]?.n ?? 0;
  }
  const size = await client.query<{ bytes: string }>("SELECT pg_database_size(current_database())::text AS bytes");
  return { rows, bytes: Number(size.rows[0]?.bytes ?? 0) };
}
