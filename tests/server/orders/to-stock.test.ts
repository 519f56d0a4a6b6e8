import { describe, expect, it } from "vitest";
import { listLots } from "@/lib/server/lots/reads";
import { stockShare } from "@/lib/server/orders/to-stock";
import { addThing } from "@/lib/server/orders/writes";
import type { Member } from "@/lib/server/session";
import { newClub } from "../../support/club";
import { handOutAll, itemOf, moveTo, newOrdering, offerPacks, orderAs, receiveAll } from "../../support/ordering";

/** Four kilograms of malt for a member, in sacks of 5 kg for 8.00, weighed out. */
async function handedOut(member: Member, organiser: Member) {
  const orderId = await newOrdering(organiser);
  const { itemId } = await addThing(member, {
    orderId,
    kind: "fermentable",
    name: "Rye malt",
    unit: "g",
    amount: 4000,
  });
  await offerPacks(organiser, { orderId, name: "Rye malt", packs: [[5000, 800]] });
  for (const state of ["locked", "placed"] as const) await moveTo(organiser, orderId, state);
  await receiveAll(organiser, orderId);
  await moveTo(organiser, orderId, "received");
  return { orderId, itemId };
}

describe("what was weighed out", () => {
  it("becomes a lot of the member's own, with what it cost", async () => {
    const { organiser, member } = await newClub("member");
    const { orderId, itemId } = await handedOut(member, organiser);
    await expect(stockShare(member, { orderId, itemId, lockVersion: 1 })).rejects.toThrow(
      "No Rye malt was weighed out for you.",
    );
    await handOutAll(organiser, orderId);
    const lockVersion = itemOf(await orderAs(member, orderId), "Rye malt").shares[0]?.lockVersion ?? 0;
    expect(await stockShare(member, { orderId, itemId, lockVersion })).toEqual({ ok: true });
    expect(await listLots(member)).toMatchObject([
      {
        owner: { id: member.userId },
        name: "Rye malt",
        label: "Autumn order",
        onHand: 4,
        unit: "kg",
        price: { minor: 800, currency: "EUR", for: 4 },
      },
    ]);
  });

  it("becomes one lot, however often it is asked for", async () => {
    const { organiser, member } = await newClub("member");
    const { orderId, itemId } = await handedOut(member, organiser);
    await handOutAll(organiser, orderId);
    const lockVersion = itemOf(await orderAs(member, orderId), "Rye malt").shares[0]?.lockVersion ?? 0;
    const take = (version: number) => stockShare(member, { orderId, itemId, lockVersion: version });
    const outcomes = await Promise.all([take(lockVersion), take(lockVersion), take(lockVersion + 1)]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await listLots(member)).toHaveLength(1);
  });

  it("is taken by nobody else", async () => {
    const { organiser, member } = await newClub("member");
    const { orderId, itemId } = await handedOut(member, organiser);
    await handOutAll(organiser, orderId);
    await expect(stockShare(organiser, { orderId, itemId, lockVersion: 2 })).rejects.toThrow(
      "No Rye malt was weighed out for you.",
    );
    expect(await listLots(organiser)).toEqual([]);
  });
});
