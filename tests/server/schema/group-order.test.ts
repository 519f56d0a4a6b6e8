import { randomUUID } from "node:crypto";
import type { Client } from "pg";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { connectAs, insert, type Row } from "../../support/sql-session";

const HERE = { spaceId: randomUUID(), userId: randomUUID() };
const common = { space_id: HERE.spaceId };
let here: Client;
let round: Row;
let item: Row;
let offer: Row;
let share: Row;

beforeAll(async () => {
  here = await connectAs("gyle_app", HERE);
});
afterAll(() => here.end());

beforeEach(async () => {
  const [roundId, itemId] = [randomUUID(), randomUUID()];
  round = { ...common, id: roundId, title: "Order", currency: "EUR", created_by: HERE.userId };
  item = { ...common, round_id: roundId, id: itemId, kind: "fermentable", name: "Malt", name_key: "malt", unit: "g" };
  const ofItem = { ...common, round_id: roundId, item_id: itemId };
  offer = { ...ofItem, id: randomUUID(), size: 5000, price_minor: 800 };
  share = { ...ofItem, user_id: HERE.userId, needed: 5000, on_hand: 1000, wanted: 500, amount: 4500 };
  await insert(here, "order_round", round);
  await insert(here, "order_item", item);
});

const move = (state: string) => here.query("UPDATE order_round SET state = $1 WHERE id = $2", [state, round.id]);
const set = (table: string, change: string) =>
  here.query(`UPDATE ${table} SET ${change} WHERE round_id = $1`, [round.id]);

describe("an order in the database", () => {
  it.each([
    ["open", "placed"],
    ["open", "received"],
    ["open", "handed out"],
    ["locked", "received"],
    ["placed", "open"],
    ["placed", "locked"],
    ["received", "cancelled"],
    ["cancelled", "open"],
  ])("that is %s does not become %s", async (from, to) => {
    const way: Readonly<Record<string, readonly string[]>> = {
      open: [],
      locked: ["locked"],
      placed: ["locked", "placed"],
      received: ["locked", "placed", "received"],
      cancelled: ["cancelled"],
    };
    for (const state of way[from] ?? []) await move(state);
    await expect(move(to)).rejects.toThrow(`an order that is ${from} does not become ${to}`);
  });

  it("takes no wish, offer, item or substitution once it is locked", async () => {
    await insert(here, "order_offer", offer);
    await move("locked");
    const want = { ...common, round_id: round.id, item_id: item.id, user_id: HERE.userId, amount: 1 };
    const late = "the order is locked";
    await expect(insert(here, "order_want", want)).rejects.toThrow(late);
    await expect(insert(here, "order_offer", { ...offer, id: randomUUID() })).rejects.toThrow(late);
    await expect(
      insert(here, "order_item", { ...item, id: randomUUID(), name: "Other", name_key: "other" }),
    ).rejects.toThrow(late);
    await expect(set("order_offer", "price_minor = 1")).rejects.toThrow(late);
    await expect(here.query("DELETE FROM order_offer WHERE round_id = $1", [round.id])).rejects.toThrow(late);
  });

  it("is received only when every item that was bought is, and handed out when everybody has theirs", async () => {
    await insert(here, "order_offer", { ...offer, count: 1 });
    await insert(here, "order_share", share);
    await move("locked");
    await move("placed");
    await expect(move("received")).rejects.toThrow("an order is received once every item is");
    await set("order_item", "received_amount = 4500");
    await set("order_share", "allotted = 4500");
    await move("received");
    await expect(move("handed out")).rejects.toThrow("an order is handed out once everybody has theirs");
    await set("order_share", `handed = 4500, handed_at = now(), handed_by = '${HERE.userId}'`);
    await move("handed out");
  });

  it("allots no more than came", async () => {
    await insert(here, "order_share", share);
    await move("locked");
    await move("placed");
    await set("order_item", "received_amount = 4000");
    await expect(set("order_share", "allotted = 4001")).rejects.toThrow("more is allotted than was received");
    await set("order_share", "allotted = 4000");
  });

  it.each([
    ["whose parts do not add up", { amount: 4501 }],
    ["with more on hand than is needed", { on_hand: 5001, amount: 499 }],
    ["of nothing", { needed: 0, on_hand: 0, wanted: 0, amount: 0 }],
  ])("takes no share %s", async (_, change) => {
    await expect(insert(here, "order_share", { ...share, ...change })).rejects.toThrow("violates check constraint");
  });

  it.each([
    ["a pack of nothing", { size: 0 }],
    ["a price below nothing", { price_minor: -1 }],
    ["a pack without end", { size: 5_000_001 }],
  ])("takes no offer of %s", async (_, change) => {
    await expect(insert(here, "order_offer", { ...offer, ...change })).rejects.toThrow("violates check constraint");
  });

  it("has one item for one name", async () => {
    await expect(insert(here, "order_item", { ...item, id: randomUUID(), name: "MALT" })).rejects.toThrow(
      "one_item_a_name",
    );
    await expect(
      insert(here, "order_item", { ...item, id: randomUUID(), name: "Rye", name_key: "malt" }),
    ).rejects.toThrow("violates check constraint");
  });

  it("takes a decision on a substitution from whom it concerns only", async () => {
    const other = { ...item, id: randomUUID(), name: "Rye", name_key: "rye" };
    await insert(here, "order_item", other);
    const swap = {
      ...common,
      ...{ round_id: round.id, id: randomUUID(), user_id: HERE.userId, from_item_id: item.id, to_item_id: other.id },
      ...{ ratio: 1, proposed_by: randomUUID() },
    };
    const decided = { state: "agreed", decided_at: new Date() };
    await expect(insert(here, "order_substitution", { ...swap, ...decided, decided_by: randomUUID() })).rejects.toThrow(
      "decided_by_whom_it_concerns",
    );
    await expect(insert(here, "order_substitution", { ...swap, ...decided })).rejects.toThrow(
      "violates check constraint",
    );
    await expect(insert(here, "order_substitution", { ...swap, to_item_id: item.id })).rejects.toThrow(
      "violates check constraint",
    );
    await insert(here, "order_substitution", { ...swap, ...decided, decided_by: HERE.userId });
  });
});
