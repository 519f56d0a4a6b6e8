import { randomUUID } from "node:crypto";
import type { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { eventRow, fillSpace, lotRow, spaceRows, trialReadingRow } from "../../support/content-rows";
import { connectAs, insert } from "../../support/sql-session";

const HERE = { spaceId: randomUUID(), userId: randomUUID() };
const TABLES = [
  "recipe_revision",
  "equipment_revision",
  "brew_event",
  "audit_log",
  "ingredient_lot_movement",
  "recipe_leftover",
  "trial_reading",
];

let app: Client;
let owner: Client;

beforeAll(async () => {
  app = await connectAs("gyle_app", HERE);
  owner = await connectAs("owner", HERE);
  const rows = spaceRows(HERE);
  await fillSpace(app, rows);
  await insert(app, "brew_event", eventRow(rows.brew, HERE.userId));
  const lot = lotRow(HERE);
  await insert(app, "ingredient_lot", lot);
  const movement = { lot_id: lot.id, version: 1, kind: "counted", change: 25, after: 25, actor_id: HERE.userId };
  await insert(app, "ingredient_lot_movement", { space_id: HERE.spaceId, ...movement });
  const { space_id, recipe_id, rev } = rows.recipeRevision;
  const leftover = {
    format: "beerjson",
    version: "3",
    leftover: "[]",
    import_id: randomUUID(),
    imported_by: HERE.userId,
  };
  await insert(app, "recipe_leftover", { space_id, recipe_id, rev, ...leftover });
  const trial = { space_id, id: randomUUID(), equipment_id: rows.equipment.id, begun_by: HERE.userId };
  await insert(app, "commissioning_trial", trial);
  await insert(app, "trial_reading", trialReadingRow(trial, HERE.userId));
  await insert(app, "audit_log", { action: "test", outcome: "ok", space_id: HERE.spaceId });
});

afterAll(async () => {
  await app.end();
  await owner.end();
});

describe.each(TABLES)("%s", (table) => {
  it.each([`UPDATE ${table} SET space_id = space_id`, `DELETE FROM ${table}`, `TRUNCATE ${table} CASCADE`])(
    "refuses gyle_app: %s",
    async (sql) => {
      await expect(app.query(sql)).rejects.toThrow("permission denied");
    },
  );

  // The trigger stops also whoever has the right.
  it.each([`UPDATE ${table} SET space_id = space_id`, `DELETE FROM ${table}`, `TRUNCATE ${table} CASCADE`])(
    "refuses its owner: %s",
    async (sql) => {
      await expect(owner.query(sql)).rejects.toThrow("is append-only");
    },
  );
});
