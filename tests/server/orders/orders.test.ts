import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { inSpace } from "@/lib/server/db";
import { createLot } from "@/lib/server/lots/writes";
import { findOrder, listOrders } from "@/lib/server/orders/reads";
import { addThing, createOrder, saveItem, saveWant } from "@/lib/server/orders/writes";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { itemOf, moveTo, newOrdering, offerPacks, orderAs } from "../../support/ordering";

/** A fermentable that a member has at home, in kg. */
async function keepLot(member: Member, name: string, onHand: number): Promise<void> {
  const figures = { extract: null, moisture: null, colour: null };
  const lot = { name, onHand, label: "Rest", owner: "me", bestBefore: null, price: null, notes: "" } as const;
  await createLot(member, { ...lot, what: { kind: "fermentable", figures } });
}

describe("an open order", () => {
  it("sums what the sheets need, less what members have, and what they want beside", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const { sharedBrewId } = await newBrewing(organiser, member);
    // The sample recipe takes 4.5 kg of pale malt; 1.25 kg of it are at home.
    await keepLot(member, "pale MALT", 1.25);
    const orderId = await newOrdering(organiser, sharedBrewId);
    const { id: itemId } = itemOf(await orderAs(organiser, orderId), "Pale malt");
    await saveWant(other, { orderId, itemId, amount: 5000, lockVersion: 0 });

    const malt = itemOf(await orderAs(other, orderId), "Pale malt");
    expect(malt).toMatchObject({ unit: "g", amount: 3250 + 5000 });
    expect(malt.shares.find(({ userId }) => userId === member.userId)).toMatchObject({
      needed: 4500,
      onHand: 1250,
      wanted: 0,
      amount: 3250,
      sources: [{ label: "Test ale on Test kettle", amount: 4500 }],
    });
    expect(malt.shares.find(({ userId }) => userId === other.userId)).toMatchObject({
      needed: 0,
      wanted: 5000,
      amount: 5000,
    });
  });

  it("takes no brew into account that has begun: its malt is in the kettle", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId, brewId } = await newBrewing(organiser, member);
    const orderId = await newOrdering(organiser, sharedBrewId);
    expect((await orderAs(organiser, orderId)).items).not.toEqual([]);
    await inSpace(organiser.spaceId, organiser.userId, (tx) =>
      tx.brew.updateMany({
        where: { spaceId: organiser.spaceId, id: brewId },
        data: { state: "on the kettle", startedAt: new Date() },
      }),
    );
    expect((await orderAs(organiser, orderId)).items).toEqual([]);
  });

  it("buys the cheapest packs, splits the cost to the cent and says what is saved", async () => {
    const { organiser, member } = await newClub("member");
    const orderId = await newOrdering(organiser);
    // docs/worked-examples.md#packs: 12.4, 9.3 and 10.3 kg
    const malt = { orderId, kind: "fermentable", name: "Pale malt", unit: "g" } as const;
    const third = await join(organiser, "member");
    const { itemId } = await addThing(organiser, { ...malt, amount: 12_400 });
    await saveWant(member, { orderId, itemId, amount: 9300, lockVersion: 0 });
    await saveWant(third, { orderId, itemId, amount: 10_300, lockVersion: 0 });
    await offerPacks(organiser, {
      orderId,
      name: "Pale malt",
      packs: [
        [25_000, 3000],
        [5000, 800],
      ],
    });

    const { purchase, shares, alone } = itemOf(await orderAs(member, orderId), "Pale malt");
    expect(purchase).toEqual({ counts: [1, 2], cost: 4600, amount: 35_000, leftOver: 3000 });
    const costOf = (who: Member) => shares.find(({ userId }) => userId === who.userId)?.cost;
    expect([costOf(organiser), costOf(member), costOf(third)].toSorted()).toEqual([1337, 1481, 1782]);
    expect(alone).toBe(6400);

    await saveItem(organiser, { orderId, itemId, lockVersion: 1, leftOverTo: member.userId, cellsPerPiece: null });
    const taken = itemOf(await orderAs(member, orderId), "Pale malt").shares.find(
      ({ userId }) => userId === member.userId,
    );
    expect(taken).toMatchObject({ extra: 3000, amount: 12_300 });
    // 1616.571, 1629.714 and 1353.714 cents: the two that are left go to the .714s.
    expect(taken?.cost).toBe(1616);
  });

  it("counts yeast by the cells that a pack has, once that is said", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await newBrewing(organiser, member);
    const orderId = await newOrdering(organiser, sharedBrewId);
    const yeastOf = async () => (await orderAs(organiser, orderId)).items.find(({ kind }) => kind === "yeast");
    const before = await yeastOf();
    expect(before).toMatchObject({ unit: "pcs", amount: 1 });
    await saveItem(organiser, {
      orderId,
      itemId: before?.id ?? "",
      lockVersion: 0,
      leftOverTo: null,
      cellsPerPiece: 50,
    });
    // 21 L at some 11 to 13 °P and 0.75 million for each mL and °P are 170 to 210 billion cells: four or five packs of 50.
    expect([4, 5]).toContain((await yeastOf())?.amount);
  });

  it("gives the second of two people who change one wish to know that the first did", async () => {
    const { organiser, member } = await newClub("member");
    const orderId = await newOrdering(organiser);
    const { itemId } = await addThing(member, { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 200 });
    const change = (amount: number) => saveWant(member, { orderId, itemId, amount, lockVersion: 1 });
    const outcomes = await Promise.all([change(300), change(400)]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    expect(outcomes.filter(({ ok }) => !ok)).toEqual([{ ok: false, reason: "stale" }]);
  });

  it("keeps one item for one name, however it is written", async () => {
    const { organiser, member } = await newClub("member");
    const orderId = await newOrdering(organiser);
    const ask = (who: Member, name: string) => addThing(who, { orderId, kind: "hop", name, unit: "g", amount: 100 });
    await Promise.all([ask(organiser, "Saaz type"), ask(member, "SAAZ Type")]);
    const { items } = await orderAs(member, orderId);
    expect(items).toHaveLength(1);
    expect(items[0]).toMatchObject({ amount: 200 });
    await expect(ask(member, "saaz type")).rejects.toThrow("You want some saaz type already: change the amount there.");
  });
});

describe("who may do what", () => {
  it("members want, organisers open, offer and lock", async () => {
    const { organiser, member } = await newClub("member");
    await expect(newOrdering(member)).rejects.toThrow("Only an organiser does this.");
    const orderId = await newOrdering(organiser);
    await addThing(member, { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 200 });
    await expect(offerPacks(member, { orderId, name: "Crown caps", packs: [[100, 250]] })).rejects.toThrow(
      "Only an organiser does this.",
    );
    await offerPacks(organiser, { orderId, name: "Crown caps", packs: [[100, 250]] });
    await expect(moveTo(member, orderId, "locked")).rejects.toThrow("Only an organiser does this.");
    const seen = itemOf(await orderAs(member, orderId), "Crown caps");
    expect(seen.purchase).toMatchObject({ cost: 500 }); // members see prices too
  });

  it.each(["judge", "steward", "guest"] as const)("a %s sees no order and writes none", async (role) => {
    const club = await newClub(role);
    const orderId = await newOrdering(club.organiser);
    expect(await findOrder(club[role], orderId)).toBeNull();
    expect(await listOrders(club[role])).toEqual([]);
    await expect(
      addThing(club[role], { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 1 }),
    ).rejects.toThrow("Only members and organisers order here.");
  });

  it("nobody orders for a shared brew that is not there", async () => {
    const { organiser } = await newClub();
    const order = { title: "Lost", sharedBrewId: randomUUID(), currency: "EUR", closesAt: null, note: "" };
    await expect(createOrder(organiser, order)).rejects.toThrow("There is no such shared brew here.");
  });
});
