import type { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CLUB_PARTS, LEFT_OUT } from "@/lib/model/club-file/parts";
import { connectAs } from "../../support/sql-session";

/** What has a space_id and is no content of a club: the directory, and the commons. */
const NO_CONTENT = [
  "space",
  "membership",
  "invite",
  "audit_log",
  "calendar_token",
  "sensor_token",
  "public_recipe",
  "public_result",
  "stat_contrib",
];

let owner: Client;

beforeAll(async () => {
  owner = await connectAs("owner");
});
afterAll(async () => {
  await owner.end();
});

describe("the list of what a club's file has", () => {
  it("names every table of content, or says why it is left out", async () => {
    const { rows } = await owner.query<{ name: string }>(
      `SELECT c.relname AS name FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attname = 'space_id'
       WHERE c.relkind IN ('r', 'p') AND c.relnamespace = 'public'::regnamespace AND NOT c.relispartition
         AND c.relname <> ALL ($1) ORDER BY 1`,
      [NO_CONTENT],
    );
    const listed = [...CLUB_PARTS.map(({ table }) => table), ...Object.keys(LEFT_OUT)];
    expect([...listed].sort()).toEqual(rows.map(({ name }) => name));
  });

  it.each(CLUB_PARTS)("knows of every identifier in $table whether it is a record's or a person's", async (part) => {
    const { rows } = await owner.query<{ name: string; key: boolean }>(
      `SELECT a.attname AS name FROM pg_attribute a
       WHERE a.attrelid = $1::regclass AND a.attnum > 0 AND a.atttypid = 'uuid'::regtype AND a.attname <> 'space_id'
       ORDER BY 1`,
      [part.table],
    );
    const known = [...part.ids, ...part.people, ...(part.outside ?? [])];
    expect([...known].sort()).toEqual(rows.map(({ name }) => name));
  });

  it.each(CLUB_PARTS)("orders the rows of $table by their key", async ({ table, key }) => {
    const { rows } = await owner.query<{ columns: string[] }>(
      `SELECT array_agg(a.attname::text ORDER BY array_position(i.indkey::int2[], a.attnum)) AS columns
       FROM pg_index i JOIN pg_attribute a ON a.attrelid = i.indrelid AND a.attnum = ANY (i.indkey)
       WHERE i.indrelid = $1::regclass AND i.indisprimary`,
      [table],
    );
    expect(["space_id", ...key]).toEqual(rows[0]?.columns);
  });

  it("puts every table after those that it refers to", async () => {
    const { rows } = await owner.query<{ table: string; other: string }>(
      `SELECT conrelid::regclass::text AS "table", confrelid::regclass::text AS other FROM pg_constraint
       WHERE contype = 'f' AND conrelid <> confrelid`,
    );
    const places = new Map(CLUB_PARTS.map(({ table }, index) => [table, index]));
    for (const { table, other } of rows) {
      const [place, before] = [places.get(table), places.get(other)];
      if (place !== undefined && before !== undefined)
        expect(before, `${table} refers to ${other}`).toBeLessThan(place);
    }
  });
});
