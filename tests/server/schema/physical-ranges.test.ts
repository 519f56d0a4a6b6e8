import { randomUUID } from "node:crypto";
import type { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { eventRow, fillSpace, lotRow, planRow, spaceRows } from "../../support/content-rows";
import { connectAs, insert, type Row } from "../../support/sql-session";

const HERE = { spaceId: randomUUID(), userId: randomUUID() };
const rows = spaceRows(HERE);
let here: Client;

beforeAll(async () => {
  here = await connectAs("gyle_app", HERE);
  await fillSpace(here, rows);
});
afterAll(() => here.end());

const refused = (table: string, row: Row) =>
  expect(insert(here, table, row)).rejects.toThrow(/violates (check|not-null) constraint|out of range|overflow/);

describe("a reading", () => {
  it.each([
    ["gravity 10.5", { value: 10.5 }],
    ["gravity not a number", { value: NaN }],
    ["gravity without a value", { value: null }],
    ["gravity without a unit", { unit: null }],
    ["gravity in degrees Plato", { unit: "P", value: 1.05 }],
    ["gravity of no quantity", { payload: {} }],
    ["temperature 131 °C", { kind: "temperature", unit: "C", value: 131 }],
    ["temperature below the freezer's", { kind: "temperature", unit: "C", value: -31 }],
    ["volume below nothing", { kind: "volume", unit: "L", value: -0.1 }],
    ["volume without end", { kind: "volume", unit: "L", value: Infinity }],
    ["duration below nothing", { kind: "duration", unit: "min", value: -1 }],
    ["pH 15", { kind: "ph", unit: "pH", value: 15 }],
    ["pressure below vacuum", { kind: "pressure", unit: "kPa", value: -102 }],
    ["energy below nothing", { kind: "energy", unit: "kWh", value: -0.1 }],
    ["energy in joules", { kind: "energy", unit: "J", value: 3.6e6 }],
    ["a value of a note", { kind: "note", unit: "kWh", value: 5 }],
    ["kind unheard of", { kind: "mood" }],
    ["before there were any", { occurred_at: new Date("1999-12-31T00:00:00Z") }],
    ["correction of nothing", { kind: "correct" }],
    ["hash too short", { payload_hash: Buffer.from("short") }],
  ])("is refused: %s", async (_, change) => {
    await refused("brew_event", { ...eventRow(rows.brew, HERE.userId), ...change });
  });

  it.each([
    ["gravity", "sg", 0.98],
    ["gravity", "sg", 1.2],
    ["temperature", "C", 130],
    ["volume", "L", 0],
    ["duration", "min", 100000],
    ["ph", "pH", 14],
    ["pressure", "kPa", -101],
    ["energy", "kWh", 1_000_000],
  ])("is taken at the end of the range: %s, %s, %d", async (kind, unit, value) => {
    await insert(here, "brew_event", { ...eventRow(rows.brew, HERE.userId), kind, unit, value });
  });

  it("is taken once: the second with the same device and number is refused", async () => {
    const reading = eventRow(rows.brew, HERE.userId);
    await insert(here, "brew_event", reading);
    await expect(insert(here, "brew_event", { ...reading, id: randomUUID() })).rejects.toThrow("unique constraint");
  });
});

describe("equipment", () => {
  it.each([
    ["a kettle of 0 L", { kettle_l: 0 }],
    ["a basket of 0 kg", { basket_kg: 0 }],
    ["an element of 0 W", { rated_w: 0 }],
    ["a supply of 5 V", { supply_v: 5 }],
    ["a place above any village", { altitude_m: 6001 }],
    ["figures that are a list", { figures: [] }],
  ])("is refused: %s", async (_, change) => {
    await refused("equipment_revision", { ...rows.equipmentRevision, rev: 2, ...change });
  });
});

describe("a brew", () => {
  it.each([
    ["of 0 L", { target_volume_l: 0 }],
    ["in a state unheard of", { state: "boiling over" }],
    ["closed without a date", { state: "closed", started_at: new Date() }],
    ["closed before it began", { state: "closed", started_at: new Date(1e12), closed_at: new Date(1e12 - 1000) }],
    ["without a title", { title: "" }],
  ])("is refused: %s", async (_, change) => {
    await refused("brew", { ...rows.brew, id: randomUUID(), ...change });
  });

  it("of a shared brew is one for each kettle of a brewer", async () => {
    const sharedBrewId = randomUUID();
    const { recipe_id, recipe_rev } = rows.brew;
    const shared = { id: sharedBrewId, title: "Together", created_by: HERE.userId };
    await insert(here, "shared_brew", { space_id: HERE.spaceId, recipe_id, recipe_rev, ...shared });
    await insert(here, "shared_brew_plan", planRow({ ...rows.brew, shared_brew_id: sharedBrewId }));
    const equipmentId = randomUUID();
    await insert(here, "equipment", { ...rows.equipment, id: equipmentId });
    await insert(here, "equipment_revision", { ...rows.equipmentRevision, equipment_id: equipmentId });
    const sheet = () => ({ ...rows.brew, id: randomUUID(), shared_brew_id: sharedBrewId, plan_version: 1 });
    await insert(here, "brew", sheet());
    await insert(here, "brew", { ...sheet(), equipment_id: equipmentId });
    await expect(insert(here, "brew", sheet())).rejects.toThrow("one_sheet_a_kettle");
  });
});

describe("a vessel", () => {
  it("is booked once at a time", async () => {
    const vesselId = randomUUID();
    await insert(here, "vessel", { space_id: HERE.spaceId, id: vesselId, name: "Keg" });
    const booking = (during: string) => ({
      space_id: HERE.spaceId,
      id: randomUUID(),
      vessel_id: vesselId,
      booked_by: HERE.userId,
      during,
    });
    await insert(here, "vessel_booking", booking("[2026-03-01,2026-03-08)"));
    await insert(here, "vessel_booking", booking("[2026-03-08,2026-03-10)"));
    await expect(insert(here, "vessel_booking", booking("[2026-03-07,2026-03-09)"))).rejects.toThrow(
      "one_booking_at_a_time",
    );
    await refused("vessel_booking", booking("[2026-04-01,)"));
  });
});

describe("a lot", () => {
  it.each([
    ["less than nothing on hand", { on_hand: -0.001 }],
    ["a price without a currency", { price_minor: 450, price_for: 100 }],
    ["a price below nothing", { price_minor: -1, price_for: 100, currency: "EUR" }],
    ["a price for nothing", { price_minor: 450, price_for: 0, currency: "EUR" }],
    ["a currency in small letters", { price_minor: 450, price_for: 100, currency: "eur" }],
    ["a unit unheard of", { unit: "bags" }],
    ["a kind unheard of", { kind: "yoghurt" }],
  ])("is refused: %s", async (_, change) => {
    await refused("ingredient_lot", { ...lotRow(HERE), ...change });
  });

  it.each([
    ["less than nothing left", { after: -1 }],
    ["bought and less than before", { kind: "bought", change: -1 }],
    ["used and more than before", { kind: "used", change: 1 }],
    ["returned by no brew", { kind: "returned" }],
    ["counted by a brew", { brew_id: rows.brew.id }],
  ])("has no history of: %s", async (_, change) => {
    const lot = lotRow(HERE);
    await insert(here, "ingredient_lot", lot);
    const movement = { version: 1, kind: "counted", change: 25, after: 25, actor_id: HERE.userId };
    const row = { space_id: HERE.spaceId, lot_id: lot.id, ...movement };
    await refused("ingredient_lot_movement", { ...row, ...change });
    await insert(here, "ingredient_lot_movement", row);
  });

  it("gives a brew no more than the brew needs", async () => {
    const lot = lotRow(HERE);
    await insert(here, "ingredient_lot", lot);
    const row = { space_id: HERE.spaceId, brew_id: rows.brew.id, row_path: "fermentables.0", lot_id: lot.id };
    const taken = { label: "Sack 7", figures: {}, unit: "kg", needed: 4, taken: 4.001 };
    await refused("brew_lot", { ...row, ...taken });
    await refused("brew_lot", { ...row, ...taken, taken: 4, row_path: "water" });
  });
});
