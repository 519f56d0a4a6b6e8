import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { movedTables, type MovedTable } from "@/lib/ops/move/tables";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { NOT_CONTENT } from "../../support/shard-lint";

/** As a distributed engine would: PostgreSQL itself refuses a key or a reference that leaves out the column of distribution. */
const PARTS = 4;

let admin: Client;
let tables: readonly MovedTable[];

beforeAll(async () => {
  const address = new URL(process.env.SUPERUSER_URL_TEST ?? "");
  address.pathname = new URL(process.env.DATABASE_URL ?? "").pathname;
  admin = new Client({ connectionString: address.href });
  await admin.connect();
  const { organiser, member } = await newClub("member");
  await newBrewing(organiser, member);
  tables = (await movedTables(admin)).filter(({ name }) => !NOT_CONTENT.includes(name));
  await admin.query("BEGIN");
  await admin.query("CREATE SCHEMA hashed");
});

afterAll(async () => {
  await admin.query("ROLLBACK");
  await admin.end();
});

async function split(name: string): Promise<void> {
  // Before version 17 no exclusion is taken on a table in parts; the other rules are.
  const { rows } = await admin.query<{ n: number }>("SELECT current_setting('server_version_num')::int AS n");
  const isNew = (rows[0]?.n ?? 0) >= 170_000;
  const like = isNew ? "INCLUDING ALL" : "INCLUDING ALL EXCLUDING INDEXES";
  await admin.query(`CREATE TABLE hashed."${name}" (LIKE public."${name}" ${like}) PARTITION BY HASH (space_id)`);
  for (let part = 0; part < PARTS; part++) {
    await admin.query(
      `CREATE TABLE hashed."${name}_${String(part)}" PARTITION OF hashed."${name}"
       FOR VALUES WITH (MODULUS ${String(PARTS)}, REMAINDER ${String(part)})`,
    );
  }
}

/** The references of a table as the database itself writes them, to whichever tables are named so. */
async function references(name: string): Promise<readonly string[]> {
  const { rows } = await admin.query<{ rule: string }>(
    `SELECT pg_get_constraintdef(oid) AS rule FROM pg_constraint
     WHERE conrelid = ('public."' || $1 || '"')::regclass AND contype = 'f'`,
    [name],
  );
  return rows.map(({ rule }) => rule);
}

describe("content in parts by the hash of its space", () => {
  it("takes every table with its keys and checks, every row, and every reference within the space", async () => {
    for (const { name } of tables) await split(name);
    let copied = 0;
    for (const { name, columns } of tables) {
      const list = columns.map((column) => `"${column}"`).join(", ");
      const { rowCount } = await admin.query(
        `INSERT INTO hashed."${name}" (${list}) SELECT ${list} FROM public."${name}"`,
      );
      copied += rowCount ?? 0;
    }
    const rules = new Map<string, readonly string[]>();
    for (const { name } of tables) rules.set(name, await references(name));
    await admin.query("SET LOCAL search_path = hashed, public");
    for (const [name, each] of rules) {
      for (const rule of each) await admin.query(`ALTER TABLE hashed."${name}" ADD ${rule}`);
    }
    expect(copied).toBeGreaterThan(10);
    expect([...rules.values()].flat().length).toBeGreaterThan(30);
  }, 60_000);

  it("is asked in one part where the space is told", async () => {
    const { rows } = await admin.query<{ "QUERY PLAN": string }>(
      "EXPLAIN SELECT FROM hashed.brew_event WHERE space_id = '00000000-0000-0000-0000-000000000001'",
    );
    const plan = rows.map((row) => row["QUERY PLAN"]).join("\n");
    expect(plan.match(/brew_event_\d/g)?.length).toBeGreaterThan(0);
    expect(new Set(plan.match(/ on brew_event_\d/g)).size).toBe(1);
  });

  it("refuses a rule that reaches over spaces", async () => {
    await admin.query("SAVEPOINT before");
    await expect(admin.query("ALTER TABLE hashed.recipe ADD UNIQUE (title)")).rejects.toThrow(/partitioning columns/);
    await admin.query("ROLLBACK TO before");
  });
});
