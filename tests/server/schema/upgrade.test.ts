import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { applyMigrations } from "@/lib/ops/apply-migrations";
import { createDatabase, MIGRATIONS } from "../../support/database";
import { withClient } from "../../support/open-client";
import { SINCE } from "../../support/version-before";

const names = (await readdir(MIGRATIONS, { withFileTypes: true }))
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort();
const later = names.filter((name) => name >= SINCE);

/** So large in a club of some years that an index or a check over all rows keeps its writers waiting. */
const LARGE =
  "brew|brew_event|recipe_revision|equipment_revision|attachment|search_document|notice|outbox|trial_reading";

const FORBIDDEN: readonly (readonly [RegExp, string])[] = [
  [/\bDROP\s+(TABLE|VIEW|FUNCTION|SCHEMA)\b/i, "drop it one release after nothing uses it any more"],
  [/\bDROP\s+COLUMN\b/i, "drop it one release after nothing uses it any more"],
  [/\bRENAME\b/i, "add the new name, write both, and drop the old one a release later"],
  [/\bALTER\s+COLUMN\s+\w+\s+(SET\s+DATA\s+)?TYPE\b/i, "add a column of the new type, and copy"],
  [/\bSET\s+NOT\s+NULL\b/i, "add a check NOT VALID, validate it, and only then"],
  [
    /\bADD\s+COLUMN\s+(?!.*\bDEFAULT\b)[^,;]*(?<!\bIS\s)\bNOT\s+NULL\b/i,
    "give it a default: the version before does not name it",
  ],
  [
    new RegExp(`\\bCREATE\\s+(UNIQUE\\s+)?INDEX\\s+(?!CONCURRENTLY)[^;]*\\bON\\s+(${LARGE})\\s`, "i"),
    "it locks out writers",
  ],
  [
    new RegExp(`\\bALTER\\s+TABLE\\s+(${LARGE})\\s[^;]*\\bADD\\s+CONSTRAINT\\s(?![^;]*NOT\\s+VALID)`, "i"),
    "add it NOT VALID",
  ],
  [/\bLOCK\s+TABLE\b|\bVACUUM\s+FULL\b|\bCLUSTER\b/i, "it stops everybody"],
];

function breaches(sql: string): readonly string[] {
  const bare = sql.replaceAll(/--.*$/gm, "");
  return FORBIDDEN.flatMap(([pattern, advice]) => {
    const [found] = pattern.exec(bare) ?? [];
    return found === undefined ? [] : [`${found.replaceAll(/\s+/g, " ")}: ${advice}`];
  });
}

describe("a migration that runs beside the version before", () => {
  it.each(later)("takes nothing from it and makes nobody wait: %s", async (name) => {
    const sql = await readFile(join(MIGRATIONS, name, "migration.sql"), "utf8");
    // Where there is a good reason, a line “-- upgrade: …” says it, and readers of the upgrade notes are told.
    if (/^-- upgrade: \S/m.test(sql)) return;
    expect(breaches(sql)).toEqual([]);
  });

  it.each([
    "ALTER TABLE brew DROP COLUMN title;",
    "ALTER TABLE app_user RENAME COLUMN email_norm TO email;",
    "ALTER TABLE brew ALTER COLUMN title TYPE varchar(20);",
    "ALTER TABLE brew ALTER title SET NOT NULL;",
    "ALTER TABLE app_user ADD COLUMN nick text NOT NULL;",
    "CREATE INDEX slow ON brew_event (space_id);",
    "ALTER TABLE brew_event ADD CONSTRAINT c CHECK (value > 0);",
  ])("would be refused for: %s", (sql) => {
    expect(breaches(sql)).toHaveLength(1);
  });

  it.each([
    "ALTER TABLE app_user ADD COLUMN nick text NOT NULL DEFAULT '';",
    "ALTER TABLE brew_event ADD CONSTRAINT c CHECK (value > 0) NOT VALID;",
    "CREATE TABLE more (space_id uuid NOT NULL); CREATE INDEX more_of ON more (space_id);",
    "REVOKE ALL ON FUNCTION f() FROM PUBLIC;",
    "ALTER TABLE space ADD COLUMN at timestamptz CHECK (at IS NULL OR deleted_at IS NOT NULL);",
  ])("may say: %s", (sql) => {
    expect(breaches(sql)).toEqual([]);
  });
});

interface Column {
  readonly at: string;
  readonly type: string;
  readonly required: boolean;
  readonly filled: boolean;
}

describe("the version before, on a database of this one", () => {
  let old: Awaited<ReturnType<typeof createDatabase>>;

  beforeAll(async () => {
    old = await createDatabase(process.env.DATABASE_URL ?? "");
    const before = names.filter((name) => name < SINCE);
    await applyMigrations({ databaseUrl: old.url, folder: MIGRATIONS, names: before });
  });

  afterAll(() => old.drop());

  const read = <T extends object>(sql: string) =>
    Promise.all(
      [old.url, process.env.DATABASE_URL ?? ""].map((url) =>
        withClient(url, async (client) => (await client.query<T>(sql)).rows),
      ),
    );

  it("finds every column it knows, of the same type, and none that it would have to fill", async () => {
    const [before = [], after = []] = await read<Column>(
      `SELECT c.relname || '.' || a.attname AS at, format_type(a.atttypid, a.atttypmod) AS type,
              a.attnotnull AS required, a.atthasdef OR a.attidentity <> '' AS filled
       FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid
       WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND a.attnum > 0 AND NOT a.attisdropped`,
    );
    const now = new Map(after.map((column) => [column.at, column]));
    const tables = new Set(before.map(({ at }) => at.split(".")[0]));
    const gone = before.filter(({ at, type }) => now.get(at)?.type !== type);
    const stricter = before.filter(({ at, required }) => !required && now.get(at)?.required === true);
    const known = new Set(before.map(({ at }) => at));
    const unfilled = after.filter(
      ({ at, required, filled }) => !known.has(at) && tables.has(at.split(".")[0]) && required && !filled,
    );
    expect(before.length).toBeGreaterThan(300);
    expect({ gone, stricter, unfilled }).toEqual({ gone: [], stricter: [], unfilled: [] });
  });

  it("has every right that it had", async () => {
    const [before = [], after = []] = await read<{ right: string }>(
      `SELECT c.relname || ' ' || p.privilege AS right
       FROM pg_class c, unnest(ARRAY['SELECT', 'INSERT', 'UPDATE', 'DELETE']) AS p (privilege)
       WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p')
         AND has_table_privilege('gyle_app', c.oid, p.privilege)`,
    );
    const now = new Set(after.map(({ right }) => right));
    expect(before.map(({ right }) => right).filter((right) => !now.has(right))).toEqual([]);
  });

  it("finds every function it calls", async () => {
    const [before = [], after = []] = await read<{ call: string }>(
      `SELECT p.proname || '(' || pg_get_function_identity_arguments(p.oid) || ')' AS call
       FROM pg_proc p WHERE p.pronamespace = 'public'::regnamespace`,
    );
    const now = new Set(after.map(({ call }) => call));
    expect(before.map(({ call }) => call).filter((call) => !now.has(call))).toEqual([]);
  });
});
