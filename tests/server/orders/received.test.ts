import { describe, expect, it } from "vitest";
import { handOutShare, receiveItem } from "@/lib/server/orders/receive";
import { decideSubstitution, proposeSubstitution } from "@/lib/server/orders/substitutions";
import { addThing, saveWant } from "@/lib/server/orders/writes";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { handOutAll, itemOf, moveTo, newOrdering, offerPacks, orderAs, receiveAll } from "../../support/ordering";

const MALT = { kind: "fermentable", name: "Pale malt", unit: "g" } as const;

/** An order of 6 and 4 kg of malt, placed: two sacks of 5 kg for 16.00. */
async function newPlacedOrder() {
  const { organiser, member } = await newClub("member");
  const orderId = await newOrdering(organiser);
  const { itemId } = await addThing(organiser, { orderId, ...MALT, amount: 6000 });
  await saveWant(member, { orderId, itemId, amount: 4000, lockVersion: 0 });
  await offerPacks(organiser, { orderId, name: "Pale malt", packs: [[5000, 800]] });
  await moveTo(organiser, orderId, "locked");
  await moveTo(organiser, orderId, "placed");
  const lockVersion = async () => itemOf(await orderAs(organiser, orderId), "Pale malt").lockVersion;
  const receipt = async () => ({ orderId, itemId, lockVersion: await lockVersion(), paidMinor: null, allotted: null });
  const shareOf = async (who: Member) =>
    itemOf(await orderAs(member, orderId), "Pale malt").shares.find(({ userId }) => userId === who.userId);
  return { organiser, member, orderId, itemId, receipt, shareOf };
}

describe("a delivery", () => {
  it("that is short is shared in proportion, and the cost of what came with it", async () => {
    const { organiser, member, receipt, shareOf } = await newPlacedOrder();
    expect(await receiveItem(organiser, { ...(await receipt()), received: 8000, paidMinor: 1300 })).toEqual({
      ok: true,
    });
    // 8 kg by 6 to 4, and 13.00 by the same
    expect(await shareOf(organiser)).toMatchObject({ amount: 6000, allotted: 4800, cost: 780 });
    expect(await shareOf(member)).toMatchObject({ amount: 4000, allotted: 3200, cost: 520 });
  });

  it("that is short is shared as the organiser says, but never more than came", async () => {
    const { organiser, member, receipt, shareOf } = await newPlacedOrder();
    const said = (own: number, theirs: number) => ({ [organiser.userId]: own, [member.userId]: theirs });
    await expect(
      receiveItem(organiser, { ...(await receipt()), received: 8000, allotted: said(4001, 4000) }),
    ).rejects.toThrow("Shares of Pale malt: 8001 g together are more than the 8000 g that came.");
    await receiveItem(organiser, { ...(await receipt()), received: 8000, allotted: said(4000, 4000) });
    expect(await shareOf(organiser)).toMatchObject({ allotted: 4000, cost: 800 });
    expect(await shareOf(member)).toMatchObject({ allotted: 4000, cost: 800 });
  });

  it("of which nothing came leaves nothing to share, and what was charged to who ordered", async () => {
    const { organiser, receipt, shareOf } = await newPlacedOrder();
    await receiveItem(organiser, { ...(await receipt()), received: 0, paidMinor: 0 });
    expect(await shareOf(organiser)).toMatchObject({ allotted: 0, cost: 0 });
  });

  it("is noted by one of two people who note it at once", async () => {
    const { organiser, receipt } = await newPlacedOrder();
    const second = await join(organiser, "organiser");
    const asked = { ...(await receipt()), received: 10_000 };
    const outcomes = await Promise.all([
      receiveItem(organiser, asked),
      receiveItem(second, { ...asked, received: 9000 }),
    ]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it("is complete only once every item is noted", async () => {
    const { organiser, orderId } = await newPlacedOrder();
    await expect(moveTo(organiser, orderId, "received")).rejects.toThrow("Not said yet how much came of: Pale malt.");
    await receiveAll(organiser, orderId);
    expect(await moveTo(organiser, orderId, "received")).toEqual({ ok: true });
  });

  it("is noted while the order is placed, by an organiser", async () => {
    const { organiser, member, orderId, receipt } = await newPlacedOrder();
    await expect(receiveItem(member, { ...(await receipt()), received: 1 })).rejects.toThrow(
      "Only an organiser does this.",
    );
    await receiveAll(organiser, orderId);
    await moveTo(organiser, orderId, "received");
    await expect(receiveItem(organiser, { ...(await receipt()), received: 1 })).rejects.toThrow(
      "This order is received by now",
    );
  });
});

describe("handing out", () => {
  it("notes the weight, who weighed it and when, and the order ends when all have theirs", async () => {
    const { organiser, member, orderId, itemId, shareOf } = await newPlacedOrder();
    await receiveAll(organiser, orderId);
    await moveTo(organiser, orderId, "received");
    await expect(moveTo(organiser, orderId, "handed out")).rejects.toThrow(/^Not handed out yet: Pale malt for /);
    const mine = { orderId, itemId, userId: member.userId, lockVersion: (await shareOf(member))?.lockVersion ?? 0 };
    expect(await handOutShare(organiser, { ...mine, amount: 3995 })).toEqual({ ok: true });
    expect((await shareOf(member))?.handed).toMatchObject({ amount: 3995, byName: "Olga Organiser" });
    expect(await handOutShare(organiser, { ...mine, amount: 1 })).toEqual({ ok: false, reason: "stale" });
    await handOutAll(organiser, orderId);
    expect(await moveTo(organiser, orderId, "handed out")).toEqual({ ok: true });
    expect((await orderAs(member, orderId)).events.map(({ text }) => text)[0]).toBe(
      "closed the order: all is handed out",
    );
  });

  it("is not for members, nor for whom the order has nothing", async () => {
    const { organiser, member, orderId, itemId } = await newPlacedOrder();
    const other = await join(organiser, "member");
    const share = { orderId, itemId, userId: other.userId, lockVersion: 1, amount: 1 };
    await expect(handOutShare(member, share)).rejects.toThrow("Only an organiser does this.");
    await expect(handOutShare(organiser, share)).rejects.toThrow("This member has no share of this item.");
  });
});

describe("a substitution", () => {
  async function proposed() {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await newBrewing(organiser, member);
    const orderId = await newOrdering(organiser, sharedBrewId);
    const { itemId: toItemId } = await addThing(organiser, {
      orderId,
      kind: "hop",
      name: "Other hop",
      unit: "g",
      amount: 100,
    });
    const fromItemId = itemOf(await orderAs(organiser, orderId), "Bitter hop").id;
    const proposal = { orderId, userId: member.userId, fromItemId, toItemId, ratio: 1.2 };
    const { id } = await proposeSubstitution(organiser, proposal);
    return { organiser, member, orderId, id, proposal };
  }

  it("counts once the member agrees: 25 g of one are 30 g of another", async () => {
    const { organiser, member, orderId, id } = await proposed();
    expect(itemOf(await orderAs(organiser, orderId), "Bitter hop").amount).toBe(25);
    expect(await decideSubstitution(member, { orderId, id, lockVersion: 1, state: "agreed" })).toEqual({ ok: true });
    const order = await orderAs(organiser, orderId);
    expect(itemOf(order, "Bitter hop").amount).toBe(0);
    expect(itemOf(order, "Other hop").amount).toBe(100 + 30);
    expect(order.substitutions).toMatchObject([
      { state: "agreed", userName: "Some member", proposedByName: "Olga Organiser" },
    ]);
    expect(order.substitutions[0]?.decidedAt).toBeInstanceOf(Date);
  });

  it("is agreed to by nobody else, not even an organiser", async () => {
    const { organiser, orderId, id } = await proposed();
    const decision = { orderId, id, lockVersion: 1, state: "agreed" } as const;
    await expect(decideSubstitution(organiser, decision)).rejects.toThrow(
      "Only Some member agrees to this: it is their beer.",
    );
  });

  it("is one at a time for each item, and another can follow one that was declined", async () => {
    const { organiser, member, orderId, id, proposal } = await proposed();
    await expect(proposeSubstitution(organiser, proposal)).rejects.toThrow(
      "Some member has a replacement for Bitter hop already.",
    );
    await decideSubstitution(member, { orderId, id, lockVersion: 1, state: "declined" });
    expect(itemOf(await orderAs(organiser, orderId), "Bitter hop").amount).toBe(25);
    await proposeSubstitution(organiser, { ...proposal, ratio: 1 });
  });

  it("is decided once: of two answers at once the second is told", async () => {
    const { member, orderId, id } = await proposed();
    const say = (state: "agreed" | "declined") => decideSubstitution(member, { orderId, id, lockVersion: 1, state });
    const outcomes = await Promise.all([say("agreed"), say("declined")]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it("is proposed by a member to nobody but themselves, and never across units", async () => {
    const { organiser, orderId, proposal } = await proposed();
    const other = await join(organiser, "member");
    await expect(proposeSubstitution(other, proposal)).rejects.toThrow(
      "Only an organiser proposes this to somebody else.",
    );
    const { itemId: capsId } = await addThing(organiser, {
      orderId,
      kind: "other",
      name: "Crown caps",
      unit: "pcs",
      amount: 1,
    });
    await expect(proposeSubstitution(organiser, { ...proposal, toItemId: capsId })).rejects.toThrow(
      "Replacement: Crown caps is counted in pcs, Bitter hop in g.",
    );
  });
});
