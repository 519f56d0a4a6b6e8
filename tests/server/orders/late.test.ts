import { describe, expect, it } from "vitest";
import { inSpace } from "@/lib/server/db";
import { askLate, decideLate, letLate } from "@/lib/server/orders/late-wishes";
import { addThing, saveItem, saveWant } from "@/lib/server/orders/writes";
import type { Member } from "@/lib/server/session";
import { join, newClub } from "../../support/club";
import { itemOf, moveTo, newOrdering, offerPacks, orderAs } from "../../support/ordering";

const REASON = "Was away when it was locked";

/** 200 caps for the organiser and 300 for the member, in packs of 100 for 2.50, locked. */
async function lockedOrder(takerOf: "nobody" | "organiser" = "nobody") {
  const { organiser, member } = await newClub("member");
  const third = await join(organiser, "member");
  const orderId = await newOrdering(organiser);
  const caps = { orderId, kind: "other", name: "Crown caps", unit: "pcs" } as const;
  const { itemId } = await addThing(organiser, { ...caps, amount: 200 });
  await saveWant(member, { orderId, itemId, amount: 300, lockVersion: 0 });
  await offerPacks(organiser, { orderId, name: "Crown caps", packs: [[100, 250]] });
  if (takerOf === "organiser") {
    const settings = { orderId, itemId, lockVersion: 1, cellsPerPiece: null };
    await saveItem(organiser, { ...settings, leftOverTo: organiser.userId });
  }
  await moveTo(organiser, orderId, "locked");
  return { organiser, member, third, orderId, itemId };
}

async function lateOf(who: Member, orderId: string) {
  const order = await orderAs(who, orderId);
  const [late] = order.lateWishes;
  const [difference] = order.lateDifferences;
  return { order, id: late?.id ?? "", lockVersion: late?.lockVersion ?? 0, late, difference };
}

async function takeIn(organiser: Member, orderId: string) {
  const { id, lockVersion, difference } = await lateOf(organiser, orderId);
  const fingerprint = difference?.fingerprint ?? "";
  return decideLate(organiser, { orderId, id, lockVersion, state: "taken in", fingerprint });
}

describe("a late wish", () => {
  it("changes nothing until an organiser who saw the difference takes it in; then one part, the packs and the cost", async () => {
    const { organiser, third, orderId, itemId } = await lockedOrder();
    const before = itemOf(await orderAs(organiser, orderId), "Crown caps");
    await letLate(organiser, { orderId, userId: third.userId, reason: REASON });
    expect(await askLate(third, { orderId, itemId, amount: 150, lockVersion: 1 })).toEqual({ ok: true });

    const { order, difference } = await lateOf(organiser, orderId);
    expect(itemOf(order, "Crown caps")).toEqual(before);
    // 500 caps are five packs, 12.50; with 150 more it takes seven, 17.50, and 50 are left over.
    expect(difference).toMatchObject({
      before: { amount: 500, purchase: { counts: [5], cost: 1250, leftOver: 0 } },
      after: { amount: 650, purchase: { counts: [7], cost: 1750, leftOver: 50 } },
    });

    expect(await takeIn(organiser, orderId)).toEqual({ ok: true });
    const after = await orderAs(third, orderId);
    const caps = itemOf(after, "Crown caps");
    expect(caps).toMatchObject({ amount: 650, purchase: { counts: [7], cost: 1750 } });
    const costOf = (who: Member) => caps.shares.find(({ userId }) => userId === who.userId)?.cost;
    // 17.50 by 200, 300 and 150: 5.38, 8.08 and 4.04 with the odd cent to the largest remainder.
    expect(costOf(third)).toBe(404);
    expect(caps.shares.reduce((sum, { cost }) => sum + (cost ?? 0), 0)).toBe(1750);
    expect(after.events[0]?.text).toContain(`150 pcs of Crown caps beside the sheets, not 0 pcs (${REASON})`);
    expect(after.lateWishes).toMatchObject([{ state: "taken in", reason: REASON }]);
    expect(await moveTo(organiser, orderId, "placed")).toEqual({ ok: true });
  });

  it("can take a wish back, and what is left over goes to who takes it", async () => {
    const { organiser, member, orderId, itemId } = await lockedOrder("organiser");
    await letLate(organiser, { orderId, userId: member.userId, reason: REASON });
    await askLate(member, { orderId, itemId, amount: 250, lockVersion: 1 });
    expect(await takeIn(organiser, orderId)).toEqual({ ok: true });
    const partly = itemOf(await orderAs(organiser, orderId), "Crown caps");
    expect(partly.shares.find(({ userId }) => userId === organiser.userId)).toMatchObject({ extra: 50, amount: 250 });

    await letLate(organiser, { orderId, userId: member.userId, reason: "Wants none after all" });
    await askLate(member, { orderId, itemId, amount: 0, lockVersion: 1 });
    expect(await takeIn(organiser, orderId)).toEqual({ ok: true });
    const { shares, purchase } = itemOf(await orderAs(organiser, orderId), "Crown caps");
    expect(shares.map(({ userId, amount }) => [userId, amount])).toEqual([[organiser.userId, 200]]);
    expect(purchase).toMatchObject({ counts: [2], cost: 500, leftOver: 0 });
  });

  it("is kept when the order is opened again", async () => {
    const { organiser, third, orderId, itemId } = await lockedOrder();
    await letLate(organiser, { orderId, userId: third.userId, reason: REASON });
    await askLate(third, { orderId, itemId, amount: 150, lockVersion: 1 });
    await takeIn(organiser, orderId);
    const locked = itemOf(await orderAs(organiser, orderId), "Crown caps");
    await moveTo(organiser, orderId, "open");
    const open = itemOf(await orderAs(organiser, orderId), "Crown caps");
    expect([open.amount, open.purchase]).toEqual([locked.amount, locked.purchase]);
  });

  it("is refused where the difference is another than the organiser saw", async () => {
    const { organiser, member, third, orderId, itemId } = await lockedOrder();
    await letLate(organiser, { orderId, userId: third.userId, reason: REASON });
    await askLate(third, { orderId, itemId, amount: 150, lockVersion: 1 });
    const seen = await lateOf(organiser, orderId);
    const decision = {
      orderId,
      id: seen.id,
      state: "taken in",
      fingerprint: seen.difference?.fingerprint ?? "",
    } as const;
    // The wish itself changes after it was seen.
    await askLate(third, { orderId, itemId, amount: 160, lockVersion: seen.lockVersion });
    expect(await decideLate(organiser, { ...decision, lockVersion: seen.lockVersion })).toMatchObject({ ok: false });
    expect(await decideLate(organiser, { ...decision, lockVersion: seen.lockVersion + 1 })).toMatchObject({
      ok: false,
    });
    // The order does: another late wish is taken in first.
    const again = await lateOf(organiser, orderId);
    await letLate(organiser, { orderId, userId: member.userId, reason: REASON });
    await askLate(member, { orderId, itemId, amount: 700, lockVersion: 1 });
    const others = (await orderAs(organiser, orderId)).lateDifferences.find(({ wishId }) => wishId !== again.id);
    const other = { orderId, id: others?.wishId ?? "", lockVersion: 2, fingerprint: others?.fingerprint ?? "" };
    expect(await decideLate(organiser, { ...other, state: "taken in" })).toEqual({ ok: true });
    const late = { ...decision, lockVersion: again.lockVersion, fingerprint: again.difference?.fingerprint ?? "" };
    expect(await decideLate(organiser, late)).toEqual({ ok: false, reason: "stale" });
  });

  it("lets through one of two organisers who take it in at once", async () => {
    const { organiser, third, orderId, itemId } = await lockedOrder();
    const second = await join(organiser, "organiser");
    await letLate(organiser, { orderId, userId: third.userId, reason: REASON });
    await askLate(third, { orderId, itemId, amount: 150, lockVersion: 1 });
    const outcomes = await Promise.all([takeIn(organiser, orderId), takeIn(second, orderId)]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    expect(itemOf(await orderAs(organiser, orderId), "Crown caps").amount).toBe(650);
  });

  it("is named only by whom an organiser lets, only while the order is locked, and never twice at once", async () => {
    const { organiser, member, third, orderId, itemId } = await lockedOrder();
    const ask = { orderId, itemId, amount: 10, lockVersion: 1 };
    await expect(askLate(third, ask)).rejects.toThrow("an organiser can let you wish late");
    await expect(letLate(member, { orderId, userId: third.userId, reason: REASON })).rejects.toThrow(
      "Only an organiser does this.",
    );
    await letLate(organiser, { orderId, userId: third.userId, reason: REASON });
    await expect(letLate(organiser, { orderId, userId: third.userId, reason: REASON })).rejects.toThrow(
      "may wish late already",
    );
    await expect(askLate(member, ask)).rejects.toThrow("an organiser can let you wish late");
    await expect(askLate(third, { ...ask, amount: 5_000_000 })).rejects.toThrow(
      "Amount: 5000500 pcs together is outside 0 to 5000000 pcs.",
    );
    await moveTo(organiser, orderId, "open");
    await expect(askLate(third, ask)).rejects.toThrow("This order is open by now");
    expect((await orderAs(organiser, orderId)).lateWishes).toMatchObject([{ state: "lapsed" }]);
  });

  it("that waits is decided before the order is placed", async () => {
    const { organiser, third, orderId, itemId } = await lockedOrder();
    await letLate(organiser, { orderId, userId: third.userId, reason: REASON });
    await askLate(third, { orderId, itemId, amount: 150, lockVersion: 1 });
    await expect(moveTo(organiser, orderId, "placed")).rejects.toThrow(/^A late wish waits/);
    const { id, lockVersion } = await lateOf(organiser, orderId);
    expect(await decideLate(organiser, { orderId, id, lockVersion, state: "declined", fingerprint: "" })).toEqual({
      ok: true,
    });
    expect(await moveTo(organiser, orderId, "placed")).toEqual({ ok: true });
    expect(itemOf(await orderAs(organiser, orderId), "Crown caps").amount).toBe(500);
  });

  it("opens no other item of the order: the database refuses what was not taken in", async () => {
    const { organiser, third, orderId, itemId } = await lockedOrder();
    await letLate(organiser, { orderId, userId: third.userId, reason: REASON });
    await askLate(third, { orderId, itemId, amount: 150, lockVersion: 1 });
    await takeIn(organiser, orderId);
    const { spaceId, userId } = organiser;
    // Another transaction than the one that took the wish in.
    const write = inSpace(spaceId, userId, (tx) =>
      tx.orderShare.updateMany({ where: { spaceId, roundId: orderId, itemId }, data: { wanted: 1, amount: 1 } }),
    );
    await expect(write).rejects.toThrow("the order is locked");
  });
});
