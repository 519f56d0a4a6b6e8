import { randomUUID } from "node:crypto";
import type { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { directory, inSpace } from "@/lib/server/db";
import { readModels } from "../../support/prisma-schema";
import { connectAs } from "../../support/sql-session";

const models = readModels();
let owner: Client;

beforeAll(async () => {
  owner = await connectAs("owner");
});
afterAll(async () => {
  await owner.end();
  await directory.$disconnect();
});

interface Finder {
  readonly findMany: (query: { readonly take: number }) => Promise<unknown[]>;
}

function finderOf(client: object, accessor: string): Finder | undefined {
  // The name comes from the schema as text, so the compiler cannot know what it leads to.
  return Reflect.get(client, accessor) as Finder | undefined;
}

describe("the schema of the client", () => {
  it("has every column of the database, null where the database lets it be, and no other", async () => {
    const { rows } = await owner.query<{ table: string; columns: string[] }>(
      `SELECT t.table_name AS table, array_agg(c.column_name || CASE c.is_nullable WHEN 'YES' THEN '?' ELSE '' END) AS columns
       FROM information_schema.tables t JOIN information_schema.columns c USING (table_schema, table_name)
       WHERE t.table_schema = 'public' AND t.table_name NOT IN ('_prisma_migrations', 'audit_log_default')
       GROUP BY 1`,
    );
    const inDatabase = Object.fromEntries(rows.map((row) => [row.table, [...row.columns].sort()]));
    expect(Object.fromEntries(models.map((model) => [model.table, model.columns]))).toEqual(inDatabase);
  });

  it.each(models.map((model) => model.accessor))("selects from the database: %s", async (accessor) => {
    const found = await inSpace(randomUUID(), randomUUID(), async (tx) =>
      finderOf(tx, accessor)?.findMany({ take: 1 }),
    );
    expect(found).toBeInstanceOf(Array);
  });
});

describe("inSpace", () => {
  it("works as gyle_app in the space it was given, and leaves nothing of it behind", async () => {
    const [spaceId, userId] = [randomUUID(), randomUUID()];
    const told = await inSpace(spaceId, userId, (tx) => tx.$queryRaw`SELECT current_user, ctx_space(), ctx_user()`);
    expect(told).toEqual([{ current_user: "gyle_app", ctx_space: spaceId, ctx_user: userId }]);
    const after = await Promise.all(
      Array.from({ length: 20 }, () => directory.$queryRaw`SELECT current_user, ctx_space(), ctx_user()`),
    );
    for (const rows of after) expect(rows).toEqual([{ current_user: "gyle_app", ctx_space: null, ctx_user: null }]);
  });

  it("leaves nothing written when the work fails", async () => {
    const [spaceId, userId] = [randomUUID(), randomUUID()];
    const failing = inSpace(spaceId, userId, async (tx) => {
      await tx.vessel.create({ data: { spaceId, id: randomUUID(), name: "Keg" } });
      throw new Error("changed my mind");
    });
    await expect(failing).rejects.toThrow("changed my mind");
    expect(await inSpace(spaceId, userId, (tx) => tx.vessel.count())).toBe(0);
  });

  it("has the database end what takes too long", async () => {
    const told = await inSpace(
      randomUUID(),
      randomUUID(),
      (tx) => tx.$queryRaw`
      SELECT current_setting('statement_timeout') AS statement, current_setting('lock_timeout') AS lock,
             current_setting('idle_in_transaction_session_timeout') AS idle`,
    );
    expect(told).toEqual([{ statement: "5s", lock: "3s", idle: "10s" }]);
  });
});
