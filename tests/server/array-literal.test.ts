import fc from "fast-check";
import type { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { arrayLiteral } from "@/lib/server/array-literal";
import { connectAs } from "../support/sql-session";

let client: Client;
beforeAll(async () => {
  client = await connectAs("gyle_app");
});
afterAll(() => client.end());

describe("arrayLiteral", () => {
  it("is read by the database as what it was, whatever the texts say", async () => {
    // A text of the database holds everything but the character 0.
    const text = fc
      .oneof(
        fc.string({ unit: "binary" }),
        fc.constantFrom('"', "\\", "{}", ",", "NULL", "null", "", "'; DROP TABLE x"),
      )
      .map((each) => each.replaceAll("\0", ""));
    const values = fc.array(fc.option(text, { nil: null }), { maxLength: 8 });
    await fc.assert(
      fc.asyncProperty(values, async (given) => {
        const { rows } = await client.query<{ read: unknown }>("SELECT $1::text[] AS read", [arrayLiteral(given)]);
        expect(rows[0]?.read).toEqual(given);
      }),
      { numRuns: 300 },
    );
  });

  it("takes numbers", async () => {
    const given = [1.5, null, -3, 1e-7];
    const { rows } = await client.query<{ read: unknown }>("SELECT $1::float8[] AS read", [arrayLiteral(given)]);
    expect(rows[0]?.read).toEqual(given);
  });
});
