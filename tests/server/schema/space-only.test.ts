import { randomUUID } from "node:crypto";
import type { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { eventRow, fillSpace, spaceRows } from "../../support/content-rows";
import { readModels } from "../../support/prisma-schema";
import { connectAs, insert } from "../../support/sql-session";

const HERE = { spaceId: randomUUID(), userId: randomUUID() };
const ELSEWHERE = { spaceId: randomUUID(), userId: randomUUID() };
const OUTSIDE_A_SPACE = [
  "app_user",
  "space",
  "membership",
  "invite",
  "calendar_token",
  "sensor_token",
  "audit_log",
  "public_recipe",
  "public_result",
  "stat_contrib",
  "recipe_lineage",
];

let here: Client;
let elsewhere: Client;
let contentTables: readonly string[];
const rows = spaceRows(HERE);
const foreign = spaceRows(ELSEWHERE);

beforeAll(async () => {
  here = await connectAs("gyle_app", HERE);
  elsewhere = await connectAs("gyle_app", ELSEWHERE);
  await fillSpace(here, rows);
  await insert(here, "brew_event", eventRow(rows.brew, HERE.userId));
  await fillSpace(elsewhere, foreign);
  const found = await here.query<{ name: string }>(
    `SELECT c.relname AS name FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attname = 'space_id'
     WHERE c.relkind IN ('r', 'p') AND c.relnamespace = 'public'::regnamespace AND NOT c.relispartition
       AND c.relname <> ALL ($1) ORDER BY 1`,
    [OUTSIDE_A_SPACE],
  );
  contentTables = found.rows.map((row) => row.name);
});

afterAll(async () => {
  await here.end();
  await elsewhere.end();
});

async function countIn(client: Client, table: string): Promise<number> {
  const { rows: counted } = await client.query<{ n: number }>(`SELECT count(*)::int AS n FROM ${table}`);
  return counted[0]?.n ?? NaN;
}

describe("content", () => {
  it("is every table of the schema that names its space", () => {
    const named = readModels().filter(
      ({ table, columns }) => columns.includes("space_id") && !OUTSIDE_A_SPACE.includes(table),
    );
    expect(contentTables).toEqual(named.map(({ table }) => table).sort());
    expect(contentTables.length).toBeGreaterThanOrEqual(20);
  });

  it.each(["gyle_app", "owner"] as const)("is invisible to %s without a space", async (role) => {
    const nowhere = await connectAs(role);
    for (const table of contentTables) expect(await countIn(nowhere, table), table).toBe(0);
    await nowhere.end();
  });

  it("of one space is visible there and from nowhere else", async () => {
    expect(await countIn(here, "brew_event")).toBe(1);
    for (const table of ["recipe", "recipe_revision", "equipment", "equipment_revision", "brew"]) {
      expect(await countIn(here, table), table).toBe(1);
      const { rows: found } = await elsewhere.query(`SELECT FROM ${table} WHERE space_id = $1`, [HERE.spaceId]);
      expect(found, table).toEqual([]);
    }
  });

  it("cannot be written into another space, nor moved there", async () => {
    await expect(insert(elsewhere, "recipe", { ...rows.recipe, id: randomUUID() })).rejects.toThrow(
      "row-level security",
    );
    const moving = elsewhere.query("UPDATE recipe SET space_id = $1", [HERE.spaceId]);
    await expect(moving).rejects.toThrow("row-level security");
  });

  it("of another space is neither changed nor deleted", async () => {
    const changed = await elsewhere.query("UPDATE recipe SET title = 'mine' WHERE space_id = $1", [HERE.spaceId]);
    expect(changed.rowCount).toBe(0);
    const deleted = await elsewhere.query("DELETE FROM brew_collaborator WHERE space_id = $1", [HERE.spaceId]);
    expect(deleted.rowCount).toBe(0);
  });

  it("refers to nothing in another space", async () => {
    const { recipe_id, recipe_rev, equipment_id, equipment_rev } = foreign.brew;
    const byRecipe = { ...rows.brew, id: randomUUID(), recipe_id, recipe_rev };
    await expect(insert(here, "brew", byRecipe)).rejects.toThrow("foreign key");
    const byKettle = { ...rows.brew, id: randomUUID(), equipment_id, equipment_rev };
    await expect(insert(here, "brew", byKettle)).rejects.toThrow("foreign key");
    const byBrew = { ...eventRow(rows.brew, HERE.userId), brew_id: foreign.brew.id };
    await expect(insert(here, "brew_event", byBrew)).rejects.toThrow("foreign key");
  });
});
