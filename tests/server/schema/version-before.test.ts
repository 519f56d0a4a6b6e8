import { randomUUID } from "node:crypto";
import { readdir } from "node:fs/promises";
import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { applyMigrations } from "@/lib/ops/apply-migrations";
import { eventRow, fillSpace, spaceRows } from "../../support/content-rows";
import { createDatabase, MIGRATIONS } from "../../support/database";
import { withClient } from "../../support/open-client";
import { insert } from "../../support/sql-session";
import { SINCE } from "../../support/version-before";

interface KnownTable {
  readonly name: string;
  readonly columns: readonly string[];
  /** What the application might do there. */
  readonly rights: readonly string[];
}

const HERE = { spaceId: randomUUID(), userId: randomUUID() };
const rows = spaceRows(HERE);

let database: Awaited<ReturnType<typeof createDatabase>>;
let known: readonly KnownTable[];
let before: Readonly<Record<string, unknown>>;
let app: Client;

/** The tables as the client of the version before knows them: every statement of it names columns, and these. */
const readTables = (client: Client) =>
  client.query<KnownTable>(`
    SELECT c.relname AS name,
           array_agg(a.attname::text ORDER BY a.attnum) AS columns,
           ARRAY(SELECT p FROM unnest(ARRAY['SELECT', 'INSERT', 'UPDATE']) p WHERE has_table_privilege('gyle_app', c.oid, p)) AS rights
    FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND NOT c.relispartition
      AND c.relname <> '_prisma_migrations' AND a.attnum > 0 AND NOT a.attisdropped
      AND a.attgenerated = '' AND a.attidentity = ''
    GROUP BY c.oid, c.relname`);

/** What each table says in the columns of the version before. */
async function readAll(client: Client): Promise<Readonly<Record<string, unknown>>> {
  const found: Record<string, unknown> = {};
  for (const { name, columns, rights } of known) {
    if (!rights.includes("SELECT")) continue;
    found[name] = (await client.query(`SELECT ${list(columns)} FROM "${name}" ORDER BY 1, 2`)).rows;
  }
  return found;
}

const list = (columns: readonly string[]): string => columns.map((column) => `"${column}"`).join(", ");

beforeAll(async () => {
  database = await createDatabase(process.env.DATABASE_URL ?? "");
  const names = (await readdir(MIGRATIONS)).filter((name) => /^\d/.test(name)).sort();
  const older = names.filter((name) => name < SINCE);
  await applyMigrations({ databaseUrl: database.url, folder: MIGRATIONS, names: older });
  known = (await withClient(database.url, readTables)).rows;
  const options = `-c role=gyle_app -c app.space_id=${HERE.spaceId} -c app.user_id=${HERE.userId}`;
  app = new Client({ connectionString: database.url, options });
  await app.connect();
  await fillSpace(app, rows);
  await insert(app, "brew_event", eventRow(rows.brew, HERE.userId));
  before = await readAll(app);
  // Its connections stay open, as those of a server that goes on answering.
  await applyMigrations({ databaseUrl: database.url, folder: MIGRATIONS });
});

afterAll(async () => {
  await app.end();
  await database.drop();
});

describe("a connection of the version before, on a database that was brought up to date under it", () => {
  it("reads every table in its own columns, and what it wrote as it was", async () => {
    expect(known.length).toBeGreaterThan(50);
    expect(await readAll(app)).toEqual(before);
  });

  it("may still write every column that it knows, wherever it might", async () => {
    const refused: string[] = [];
    for (const { name, columns, rights } of known) {
      const statements = [
        ...(rights.includes("INSERT")
          ? [`INSERT INTO "${name}" (${list(columns)}) SELECT ${list(columns)} FROM "${name}"`]
          : []),
        ...(rights.includes("UPDATE") ? columns.map((column) => `UPDATE "${name}" SET "${column}" = "${column}"`) : []),
      ];
      for (const statement of statements) {
        // Planned, and its rights looked at; nothing is written.
        const error = await app.query(`EXPLAIN ${statement}`).then(
          () => null,
          (told: unknown) => (told instanceof Error ? told.message : "refused"),
        );
        if (error !== null) refused.push(`${statement}: ${error}`);
      }
    }
    expect(refused).toEqual([]);
  });

  it("writes recipes, kettles, brews and their logs as before", async () => {
    const more = spaceRows(HERE);
    await fillSpace(app, more);
    await insert(app, "brew_event", eventRow(more.brew, HERE.userId));
    await app.query("UPDATE recipe SET title = 'Mild', head_rev = 1 WHERE id = $1", [more.recipe.id]);
    const { rowCount } = await app.query("SELECT FROM brew_event WHERE brew_id = $1", [more.brew.id]);
    expect(rowCount).toBe(1);
  });
});
