import type { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { movedTables } from "@/lib/ops/move/tables";
import { distributionFaults, NOT_CONTENT } from "../../support/shard-lint";
import { connectAs } from "../../support/sql-session";

let owner: Client;
beforeAll(async () => {
  owner = await connectAs("owner");
});
afterAll(() => owner.end());

describe("the rules by which content can be split by space", () => {
  it("are kept by every content table", async () => {
    expect(await distributionFaults(owner, "public")).toEqual([]);
  });

  it("are looked at in every content table: a unique rule across clubs is seen in each", async () => {
    await owner.query("BEGIN");
    const tables = (await movedTables(owner)).filter(({ name }) => !NOT_CONTENT.includes(name));
    for (const { name, columns } of tables) {
      const column = columns.find((each) => each !== "space_id") ?? expect.fail(`${name} has nothing but its space`);
      await owner.query(`CREATE UNIQUE INDEX "across_${name}" ON "${name}" ("${column}") WHERE false`);
    }
    const faults = await distributionFaults(owner, "public");
    await owner.query("ROLLBACK");
    expect(tables.length).toBeGreaterThan(40);
    expect(faults).toEqual(tables.map(({ name }) => `key without space_id first: across_${name}`).sort());
  });

  it("are seen to be broken by each of nine planted defects, and by nothing else", async () => {
    await owner.query("BEGIN");
    await owner.query(`
      CREATE SCHEMA planted;
      SET LOCAL search_path = planted;
      CREATE TABLE sound (space_id uuid NOT NULL, id uuid NOT NULL, PRIMARY KEY (space_id, id));
      CREATE TABLE spaceless (id uuid PRIMARY KEY);
      CREATE TABLE loose (space_id uuid, id uuid);
      CREATE TABLE key_order (space_id uuid NOT NULL, id uuid NOT NULL, PRIMARY KEY (id, space_id));
      CREATE TABLE unique_alone (space_id uuid NOT NULL, slug text UNIQUE);
      CREATE TABLE afar (space_id uuid NOT NULL, who uuid, CONSTRAINT to_person FOREIGN KEY (who) REFERENCES public.app_user);
      CREATE TABLE unprotected (space_id uuid NOT NULL);
      CREATE TABLE unpoliced (space_id uuid NOT NULL);
      CREATE TABLE numbered (space_id uuid NOT NULL, n int GENERATED ALWAYS AS IDENTITY);
      CREATE TABLE serial_number (space_id uuid NOT NULL, n serial);
      DO $$ DECLARE t text; BEGIN
        FOR t IN SELECT relname FROM pg_class WHERE relnamespace = 'planted'::regnamespace AND relkind = 'r' LOOP
          CONTINUE WHEN t = 'unprotected';
          EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
          EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', t);
        END LOOP;
        FOR t IN SELECT relname FROM pg_class WHERE relnamespace = 'planted'::regnamespace AND relkind = 'r' LOOP
          CONTINUE WHEN t = 'unpoliced';
          EXECUTE format('CREATE POLICY p ON %I USING (true)', t);
        END LOOP;
      END $$`);
    const faults = await distributionFaults(owner, "planted");
    await owner.query("ROLLBACK");
    expect(faults).toEqual([
      "key without space_id first: key_order_pkey",
      "key without space_id first: spaceless_pkey",
      "key without space_id first: unique_alone_slug_key",
      "no policy: unpoliced",
      "no space_id: spaceless",
      "reference not within the space: to_person",
      "row-level security not forced: unprotected",
      "sequence in content: numbered",
      "sequence in content: serial_number",
      "space_id nullable: loose",
    ]);
  });
});

describe("gyle_app", () => {
  it("is no superuser, cannot sign in, and is under row-level security", async () => {
    const { rows } = await owner.query(
      "SELECT rolsuper, rolcanlogin, rolbypassrls, rolcreaterole, rolcreatedb FROM pg_roles WHERE rolname = 'gyle_app'",
    );
    const nothing = {
      rolsuper: false,
      rolcanlogin: false,
      rolbypassrls: false,
      rolcreaterole: false,
      rolcreatedb: false,
    };
    expect(rows).toEqual([nothing]);
  });

  it("owns nothing", async () => {
    const { rows } = await owner.query("SELECT relname FROM pg_class WHERE relowner = 'gyle_app'::regrole");
    expect(rows).toEqual([]);
  });

  it.each([
    "CREATE TABLE mine (id int)",
    "CREATE SCHEMA mine",
    "ALTER TABLE recipe ADD COLUMN extra int",
    "ALTER TABLE recipe DISABLE ROW LEVEL SECURITY",
    "DROP TABLE recipe",
    "DROP POLICY space_only ON recipe",
    "ALTER TABLE brew_event DISABLE TRIGGER append_only",
    "TRUNCATE app_user",
    "DELETE FROM app_user",
    "SELECT * FROM _prisma_migrations",
    "CREATE ROLE other",
  ])("may not: %s", async (sql) => {
    const app = await connectAs("gyle_app");
    await expect(app.query(sql)).rejects.toThrow(/permission denied|must be owner/);
    await app.end();
  });
});
