import { describe, expect, it } from "vitest";
import { inSpace } from "@/lib/server/db";
import { saveOffer } from "@/lib/server/orders/offers";
import { addThing, saveOrder } from "@/lib/server/orders/writes";
import { join, newClub } from "../../support/club";
import { itemOf, moveTo, newOrdering, offerPacks, orderAs } from "../../support/ordering";

const NAMED = { title: "Winter order", closesAt: new Date("2026-12-20"), note: "Collected on Sunday" };

async function orderOfCaps() {
  const club = await newClub("member");
  const orderId = await newOrdering(club.organiser);
  const thing = { kind: "other", name: "Crown caps", unit: "pcs", amount: 450 } as const;
  const { itemId } = await addThing(club.member, { orderId, ...thing });
  await offerPacks(club.organiser, { orderId, name: "Crown caps", packs: [[100, 250]] });
  return { ...club, orderId, itemId };
}

describe("an open order", () => {
  it("takes another title, closing day and note, and tells so in its history", async () => {
    const { organiser, member, orderId } = await orderOfCaps();
    expect(await saveOrder(organiser, { orderId, lockVersion: 1, ...NAMED })).toEqual({ ok: true });
    const order = await orderAs(member, orderId);
    expect(order).toMatchObject({ ...NAMED, lockVersion: 2 });
    expect(order.events[0]?.text).toBe("changed title, closing day or note");
  });

  it("tells the second of two organisers that the first was quicker", async () => {
    const { organiser, orderId } = await orderOfCaps();
    const second = await join(organiser, "organiser");
    const outcomes = await Promise.all(
      [organiser, second].map((who) => saveOrder(who, { orderId, lockVersion: 1, ...NAMED, title: who.userId })),
    );
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    expect((await orderAs(organiser, orderId)).lockVersion).toBe(2);
  });

  it("buys other packs once a pack has another size and price", async () => {
    const { organiser, orderId, itemId } = await orderOfCaps();
    const before = itemOf(await orderAs(organiser, orderId), "Crown caps");
    // 450 caps in hundreds: five packs of 2.50.
    expect(before.purchase).toMatchObject({ counts: [5], cost: 1250, leftOver: 50 });
    const offerId = before.offers[0]?.id ?? "";
    const change = { orderId, itemId, offerId, size: 150, priceMinor: 300, note: "Other shop" };
    expect(await saveOffer(organiser, { ...change, lockVersion: 1 })).toEqual({ ok: true });
    const after = itemOf(await orderAs(organiser, orderId), "Crown caps");
    // In packs of 150: three for 3.00.
    expect(after.purchase).toMatchObject({ counts: [3], cost: 900, leftOver: 0 });
    expect(after.offers[0]).toMatchObject({ note: "Other shop", lockVersion: 2 });
    expect(await saveOffer(organiser, { ...change, lockVersion: 1 })).toEqual({ ok: false, reason: "stale" });
  });

  it("is changed by organisers only, and not once it is locked", async () => {
    const { organiser, member, orderId, itemId } = await orderOfCaps();
    const [offer] = itemOf(await orderAs(organiser, orderId), "Crown caps").offers;
    const change = { orderId, itemId, offerId: offer?.id ?? "", lockVersion: 1, size: 1, priceMinor: 1, note: "" };
    await expect(saveOrder(member, { orderId, lockVersion: 1, ...NAMED })).rejects.toThrow(
      "Only an organiser does this.",
    );
    await expect(saveOffer(member, change)).rejects.toThrow("Only an organiser does this.");
    await moveTo(organiser, orderId, "locked");
    await expect(saveOrder(organiser, { orderId, lockVersion: 2, ...NAMED })).rejects.toThrow(
      "This order is locked by now",
    );
    await expect(saveOffer(organiser, change)).rejects.toThrow("This order is locked by now");
    const { spaceId, userId } = organiser;
    const rename = inSpace(spaceId, userId, (tx) =>
      tx.orderRound.updateMany({ where: { spaceId, id: orderId }, data: { title: "Past the service" } }),
    );
    await expect(rename).rejects.toThrow("the order is locked");
  });
});
