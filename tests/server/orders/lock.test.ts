import { describe, expect, it } from "vitest";
import { inSpace } from "@/lib/server/db";
import { moveOrder } from "@/lib/server/orders/move";
import { addThing, saveWant } from "@/lib/server/orders/writes";
import { newBrewing } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { itemOf, moveTo, newOrdering, offerPacks, orderAs } from "../../support/ordering";

const sum = (numbers: readonly (number | null)[]): number =>
  numbers.reduce<number>((all, each) => all + (each ?? 0), 0);

describe("a lock", () => {
  it("keeps the amounts: a later sheet changes nothing, and the order says so", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId, brewId } = await newBrewing(organiser, member);
    const orderId = await newOrdering(organiser, sharedBrewId);
    await offerPacks(organiser, { orderId, name: "Pale malt", packs: [[5000, 800]] });
    expect(await moveTo(organiser, orderId, "locked")).toEqual({ ok: true });
    const locked = await orderAs(member, orderId);
    expect(itemOf(locked, "Pale malt")).toMatchObject({
      amount: 4500,
      purchase: { counts: [1], cost: 800, leftOver: 500 },
    });
    expect(sum(itemOf(locked, "Pale malt").shares.map(({ cost }) => cost))).toBe(800);
    expect(locked.differences).toEqual([]);

    // The grist grows by 0.3 kg after the lock.
    const { spaceId, userId } = organiser;
    await inSpace(spaceId, userId, async (tx) => {
      const { recipe } = await tx.brew.findUniqueOrThrow({
        where: { spaceId_id: { spaceId, id: brewId } },
        select: { recipe: true },
      });
      const text = JSON.stringify(recipe).replace('"kg":4.5', '"kg":4.8');
      await tx.$executeRaw`UPDATE brew SET recipe = ${text}::jsonb WHERE space_id = ${spaceId}::uuid AND id = ${brewId}::uuid`;
    });
    const later = await orderAs(member, orderId);
    expect(later.items).toEqual(locked.items);
    expect(later.differences).toMatchObject([
      { userId: member.userId, thing: { name: "Pale malt" }, atLock: 4500, now: 4800 },
    ]);
  });

  it("is refused where the organiser saw other amounts", async () => {
    const { organiser, member } = await newClub("member");
    const orderId = await newOrdering(organiser);
    const { itemId } = await addThing(member, { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 200 });
    await offerPacks(organiser, { orderId, name: "Crown caps", packs: [[100, 250]] });
    const { lockVersion, fingerprint } = await orderAs(organiser, orderId);
    await saveWant(member, { orderId, itemId, amount: 300, lockVersion: 1 });
    const move = { orderId, state: "locked", lockVersion, fingerprint } as const;
    expect(await moveOrder(organiser, move)).toEqual({ ok: false, reason: "stale" });
    expect(await orderAs(organiser, orderId)).toMatchObject({ state: "open" });
  });

  it("needs something to buy", async () => {
    const { organiser } = await newClub();
    const orderId = await newOrdering(organiser);
    await addThing(organiser, { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 200 });
    await expect(moveTo(organiser, orderId, "locked")).rejects.toThrow(/^There is nothing to order yet/);
  });

  it("lets through one of two organisers who lock at once", async () => {
    const { organiser } = await newClub();
    const second = await join(organiser, "organiser");
    const orderId = await newOrdering(organiser);
    await addThing(organiser, { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 200 });
    await offerPacks(organiser, { orderId, name: "Crown caps", packs: [[100, 250]] });
    const { lockVersion, fingerprint } = await orderAs(organiser, orderId);
    const move = { orderId, state: "locked", lockVersion, fingerprint } as const;
    const outcomes = await Promise.all([moveOrder(organiser, move), moveOrder(second, move)]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await orderAs(organiser, orderId)).toMatchObject({ state: "locked", lockVersion: lockVersion + 1 });
  });

  it("leaves no wish that came at the same moment half in the order", async () => {
    const { organiser, member } = await newClub("member");
    const orderId = await newOrdering(organiser);
    const { itemId } = await addThing(organiser, {
      orderId,
      kind: "other",
      name: "Crown caps",
      unit: "pcs",
      amount: 200,
    });
    await offerPacks(organiser, { orderId, name: "Crown caps", packs: [[100, 250]] });
    const { lockVersion, fingerprint } = await orderAs(organiser, orderId);
    const [moved, wished] = await Promise.allSettled([
      moveOrder(organiser, { orderId, state: "locked", lockVersion, fingerprint }),
      saveWant(member, { orderId, itemId, amount: 100, lockVersion: 0 }),
    ]);
    const order = await orderAs(organiser, orderId);
    const isLocked = moved.status === "fulfilled" && moved.value.ok;
    const isIn = wished.status === "fulfilled" && wished.value.ok;
    // Either the wish was first and the organiser is told, or the lock was first and the member is.
    expect(isLocked).toBe(!isIn);
    expect(order.state).toBe(isLocked ? "locked" : "open");
    expect(itemOf(order, "Crown caps").amount).toBe(isIn ? 300 : 200);
  });

  it("can be taken back until the order is placed, and the order is open as before", async () => {
    const { organiser, member } = await newClub("member");
    const orderId = await newOrdering(organiser);
    const { itemId } = await addThing(member, { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 200 });
    await offerPacks(organiser, { orderId, name: "Crown caps", packs: [[100, 250]] });
    const open = await orderAs(organiser, orderId);
    await moveTo(organiser, orderId, "locked");
    await expect(saveWant(member, { orderId, itemId, amount: 1, lockVersion: 1 })).rejects.toThrow(
      "This order is locked by now",
    );
    await moveTo(organiser, orderId, "open");
    expect((await orderAs(organiser, orderId)).items).toEqual(open.items);
    expect(await saveWant(member, { orderId, itemId, amount: 300, lockVersion: 1 })).toEqual({ ok: true });
  });

  it("is followed by legal steps only", async () => {
    const { organiser } = await newClub();
    const orderId = await newOrdering(organiser);
    for (const state of ["placed", "received", "handed out"] as const) {
      await expect(moveTo(organiser, orderId, state)).rejects.toThrow(
        `An order that is open does not become ${state}.`,
      );
    }
    await moveTo(organiser, orderId, "cancelled");
    await expect(moveTo(organiser, orderId, "open")).rejects.toThrow(
      "An order that is cancelled does not become open.",
    );
  });
});
