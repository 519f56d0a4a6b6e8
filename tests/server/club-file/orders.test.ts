import { beforeAll, describe, expect, it } from "vitest";
import { CLUB_PARTS } from "@/lib/model/club-file/parts";
import { canonicalJson } from "@/lib/server/canonical-json";
import { exportClub, hashOfRows } from "@/lib/server/club-file/export-club";
import { importClub, readClubFile } from "@/lib/server/club-file/import-club";
import { findOrder, listOrders } from "@/lib/server/orders/reads";
import { proposeSubstitution } from "@/lib/server/orders/substitutions";
import { addThing, saveWant } from "@/lib/server/orders/writes";
import type { ClubRow } from "@/lib/model/club-file/club-file";
import type { OrderState } from "@/lib/model/order/order-words";
import type { Member } from "@/lib/server/session";
import { newClub } from "../../support/club";
import { handOutAll, moveTo, newOrdering, offerPacks, receiveAll } from "../../support/ordering";
import { connectAs } from "../../support/sql-session";

const MALT = { kind: "fermentable", unit: "g" } as const;

/** An order with a wish, an offer and a proposal, taken on to a state. */
async function orderIn(
  state: OrderState,
  { organiser, member }: Record<"organiser" | "member", Member>,
): Promise<void> {
  const orderId = await newOrdering(organiser);
  const { itemId } = await addThing(organiser, { orderId, ...MALT, name: "Pale malt", amount: 6000 });
  const { itemId: other } = await addThing(member, { orderId, ...MALT, name: "Amber malt", amount: 500 });
  await saveWant(member, { orderId, itemId, amount: 4000, lockVersion: 0 });
  for (const name of ["Pale malt", "Amber malt"]) await offerPacks(organiser, { orderId, name, packs: [[5000, 800]] });
  await proposeSubstitution(organiser, {
    orderId,
    userId: member.userId,
    fromItemId: other,
    toItemId: itemId,
    ratio: 1.5,
  });
  if (state === "cancelled") await moveTo(organiser, orderId, "cancelled");
  for (const next of ["locked", "placed", "received", "handed out"] as const) {
    if (state === "open" || state === "cancelled") return;
    if (next === "received") await receiveAll(organiser, orderId, { "Pale malt": 9000 });
    if (next === "handed out") await handOutAll(organiser, orderId);
    await moveTo(organiser, orderId, next);
    if (next === state) return;
  }
}

const STATES = ["open", "locked", "placed", "received", "handed out", "cancelled"] as const;

async function textOf(member: Member): Promise<string> {
  return [...(await exportClub(member, new Date("2026-11-28T12:00:00Z")))].join("");
}

/** The parts of a file with identifiers counted in the order in which they come. */
function partsOf(text: string): readonly unknown[] {
  const seen = new Map<string, string>();
  const id = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g;
  const parts = readClubFile(text).parts.filter(({ table }) => table !== "former_member");
  const counted = JSON.stringify(parts.map(({ table, rows }) => ({ table, rows }))).replaceAll(id, (found) => {
    const known = seen.get(found) ?? `#${String(seen.size)}`;
    seen.set(found, known);
    return known;
  });
  return JSON.parse(counted) as readonly unknown[];
}

/** A file with other rows of one table, and the checksum that goes with them. */
function changed(text: string, table: string, change: (row: ClubRow) => ClubRow): string {
  const file = readClubFile(text);
  const parts = file.parts.map((part) => {
    if (part.table !== table) return part;
    const rows = part.rows.map(change);
    return { ...part, rows, sha256: hashOfRows(rows) };
  });
  return canonicalJson({ ...file, parts });
}

let text: string;

beforeAll(async () => {
  const club = await newClub("member");
  for (const state of STATES) await orderIn(state, club);
  text = await textOf(club.organiser);
}, 120_000);

describe("group orders in the file of a club", () => {
  it("come back in every state, with items, offers, wishes, proposals, shares and who did what", async () => {
    const { organiser } = await newClub();
    await importClub(organiser, { text, matches: {} });
    expect(partsOf(await textOf(organiser))).toEqual(partsOf(text));
    const orders = await listOrders(organiser);
    expect(orders.map(({ state }) => state).sort()).toEqual([...STATES].sort());
    for (const { id } of orders) expect(await findOrder(organiser, id)).not.toBeNull();
    const filled = readClubFile(text).parts.filter(({ count }) => count > 0);
    for (const { table } of CLUB_PARTS.filter((part) => part.table.startsWith("order_"))) {
      expect(
        filled.map((part) => part.table),
        table,
      ).toContain(table);
    }
  });

  it("keep the rules of orders: none with more allotted than came", async () => {
    const { organiser } = await newClub();
    const greedy = changed(text, "order_share", (row) =>
      row.allotted === null ? row : { ...row, allotted: 90_000_000 },
    );
    await expect(importClub(organiser, { text: greedy, matches: {} })).rejects.toThrow("break a rule");
    expect(await listOrders(organiser)).toEqual([]);
  });

  it("keep the rules of orders: none handed out of which somebody has nothing", async () => {
    const { organiser } = await newClub();
    const hasty = changed(text, "order_share", (row) => ({ ...row, handed: null, handed_by: null, handed_at: null }));
    await expect(importClub(organiser, { text: hasty, matches: {} })).rejects.toThrow("“order_round” break a rule");
    expect(await listOrders(organiser)).toEqual([]);
  });

  it("have no state that the database does not know", async () => {
    const { organiser } = await newClub();
    const odd = changed(text, "order_round", (row) => ({ ...row, state: "lost" }));
    await expect(importClub(organiser, { text: odd, matches: {} })).rejects.toThrow(
      "A row of “order_round” has a state that is none of open, locked",
    );
  });
});

describe("a file from before a table had a column", () => {
  it("is taken, with the default of that column", async () => {
    const { organiser } = await newClub();
    const older = changed(text, "order_round", ({ note: _note, ...row }) => row);
    await importClub(organiser, { text: older, matches: {} });
    expect((await listOrders(organiser)).length).toBe(STATES.length);
  });
});

describe("the list of what a club's file has", () => {
  it.each(CLUB_PARTS.flatMap(({ table, moved }) => (moved === undefined ? [] : [{ table, moved }])))(
    "knows the steps to every state of $table that the database knows",
    async ({ table, moved }) => {
      const owner = await connectAs("owner");
      const { rows } = await owner.query<{ rule: string }>(
        `SELECT pg_get_constraintdef(c.oid) AS rule FROM pg_constraint c
         WHERE c.conrelid = $1::regclass AND c.conname = $2`,
        [table, `${table}_${moved.column}_check`],
      );
      await owner.end();
      const states = [...(rows[0]?.rule ?? "").matchAll(/'([^']+)'::text/g)].map(([, state]) => state);
      expect(Object.keys(moved.steps).sort()).toEqual(states.sort());
    },
  );
});
