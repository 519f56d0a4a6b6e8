import { createReadStream, createWriteStream } from "node:fs";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { pipeline } from "node:stream/promises";
import { createGunzip, createGzip } from "node:zlib";
import type { Client } from "pg";
import { Refusal } from "../refusal.mjs";
import { quoted, type Table } from "./tables";
import { withWatchAtRest } from "./watch-at-rest";

const FOLDER = "tables";
const ROWS_AT_ONCE = 200;
const BYTES_AT_ONCE = 4 * 1024 * 1024;

/**
 * Writes every row of every table: a line each, an array of what the columns are as text. Where no fitting pg_dump is
 * installed, and for the embedded database there seldom is one, this needs nothing but the connection.
 */
export async function writeRows(client: Client, tables: readonly Table[], folder: string): Promise<void> {
  await mkdir(join(folder, FOLDER));
  for (const table of tables) {
    await pipeline(linesOf(client, table), createGzip(), createWriteStream(fileOf(folder, table)));
  }
}

function fileOf(folder: string, { name }: Table): string {
  return join(folder, FOLDER, `${name}.ndjson.gz`);
}

async function* linesOf(client: Client, { name, columns }: Table): AsyncGenerator<string> {
  const texts = columns.map((column) => `${quoted(column.name)}::text`).join(", ");
  await client.query(
    `DECLARE reading NO SCROLL CURSOR FOR SELECT json_build_array(${texts})::text AS line FROM ${quoted(name)}`,
  );
  for (;;) {
    const { rows } = await client.query<{ line: string }>(`FETCH ${ROWS_AT_ONCE} FROM reading`);
    if (rows.length === 0) break;
    yield rows.map(({ line }) => `${line}\n`).join("");
  }
  await client.query("CLOSE reading");
}

/** Fills empty tables, as their owner, within the transaction of the caller. */
export async function loadRows(client: Client, tables: readonly Table[], folder: string): Promise<void> {
  const names = tables.map(({ name }) => name);
  await withWatchAtRest(client, names, async () => {
    await client.query("CREATE TEMPORARY TABLE loading (line json) ON COMMIT DROP");
    for (const table of tables) await loadTable(client, table, folder);
  });
}

/** All rows of a table in one statement, because some refer to others of the same table. */
async function loadTable(client: Client, table: Table, folder: string): Promise<void> {
  const file = createReadStream(fileOf(folder, table)).pipe(createGunzip());
  let batch: string[] = [];
  let bytes = 0;
  for await (const line of createInterface({ input: file, crlfDelay: Infinity })) {
    batch.push(line);
    bytes += line.length;
    if (bytes < BYTES_AT_ONCE) continue;
    await keep(client, batch);
    [batch, bytes] = [[], 0];
  }
  await keep(client, batch);
  const names = table.columns.map(({ name }) => quoted(name)).join(", ");
  const values = table.columns.map(({ type }, index) => `(line ->> ${index})::${type}`).join(", ");
  await client
    .query(`INSERT INTO ${quoted(table.name)} (${names}) OVERRIDING SYSTEM VALUE SELECT ${values} FROM loading`)
    .catch((cause: unknown) => {
      const told = cause instanceof Error ? cause.message : String(cause);
      throw new Refusal(`The rows of ${table.name} were not taken, and nothing was restored: ${told}.`);
    });
  await client.query("TRUNCATE loading");
}

async function keep(client: Client, lines: readonly string[]): Promise<void> {
  if (lines.length === 0) return;
  await client.query("INSERT INTO loading SELECT * FROM json_array_elements($1::json)", [`[${lines.join(",")}]`]);
}
