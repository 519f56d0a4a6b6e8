import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { applyMigrations } from "@/lib/ops/apply-migrations";
import { createDatabase, MIGRATIONS } from "../../support/database";

const FIRST = "20261125120000_foundation";

describe("applyMigrations", () => {
  let scratch: Awaited<ReturnType<typeof createDatabase>>;
  let folder: string;

  beforeAll(async () => {
    scratch = await createDatabase(process.env.DATABASE_URL ?? "");
    folder = await mkdtemp(join(tmpdir(), "gylebook-migrations-"));
    await cp(MIGRATIONS, folder, { recursive: true });
  });

  afterAll(async () => {
    await scratch.drop();
    await rm(folder, { recursive: true });
  });

  const apply = () => applyMigrations({ databaseUrl: scratch.url, folder });

  it("lets two that start at once take turns, and the second finds nothing to do", async () => {
    const names = await Promise.all([apply(), apply()]);
    expect(names.flat()).toContain(FIRST);
    expect(new Set(names.flat()).size).toBe(names.flat().length);
    expect(await apply()).toEqual([]);
  });

  it("leaves nothing of a migration that fails, and names it", async () => {
    const name = "20990101000000_half";
    await cp(join(folder, FIRST), join(folder, name), { recursive: true });
    await writeFile(join(folder, name, "migration.sql"), "CREATE TABLE half_done (id int); SELECT 1 / 0;");
    await expect(apply()).rejects.toThrow(name);
    expect(await query("SELECT to_regclass('half_done') AS found")).toEqual([{ found: null }]);
    await rm(join(folder, name), { recursive: true });
    expect(await apply()).toEqual([]);
  });

  it("refuses a migration that was changed after it had been applied", async () => {
    await writeFile(join(folder, FIRST, "migration.sql"), "SELECT 1;");
    await expect(apply()).rejects.toThrow(
      `The migration ${FIRST} has been changed since this database was made with it; undo the change.`,
    );
  });

  it("refuses a database of a newer version", async () => {
    await rm(join(folder, FIRST), { recursive: true });
    await expect(apply()).rejects.toThrow("which this version of Gylebook does not know");
  });

  async function query(sql: string): Promise<unknown[]> {
    const client = new Client({ connectionString: scratch.url });
    await client.connect();
    const { rows } = await client.query<Record<string, unknown>>(sql);
    await client.end();
    return rows;
  }
});
