import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import type { Order } from "@/lib/model/order/order";
import { askLate, decideLate, letLate } from "@/lib/server/orders/late-wishes";
import { moveOrder } from "@/lib/server/orders/move";
import { addOffer, removeOffer, saveOffer } from "@/lib/server/orders/offers";
import { findOrder, listOrders } from "@/lib/server/orders/reads";
import { handOutShare, receiveItem } from "@/lib/server/orders/receive";
import { decideSubstitution, proposeSubstitution } from "@/lib/server/orders/substitutions";
import { stockShare } from "@/lib/server/orders/to-stock";
import { addThing, createOrder, saveItem, saveOrder, saveWant } from "@/lib/server/orders/writes";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { newOrdering, offerPacks, orderAs } from "../../support/ordering";

interface Ids {
  readonly orderId: string;
  readonly itemId: string;
  readonly otherItemId: string;
  readonly offerId: string;
  readonly sharedBrewId: string;
}

/** Every write that names an order. */
const WRITES: Record<string, (member: Member, ids: Ids) => Promise<unknown>> = {
  createOrder: (member, { sharedBrewId }) =>
    createOrder(member, { title: "Stolen", sharedBrewId, currency: "EUR", closesAt: null, note: "" }),
  moveOrder: (member, { orderId }) =>
    moveOrder(member, { orderId, state: "cancelled", lockVersion: 1, fingerprint: "" }),
  saveWant: (member, { orderId, itemId }) => saveWant(member, { orderId, itemId, amount: 1, lockVersion: 0 }),
  addThing: (member, { orderId }) => addThing(member, { orderId, kind: "hop", name: "Stolen", unit: "g", amount: 1 }),
  addOffer: (member, { orderId, itemId }) => addOffer(member, { orderId, itemId, size: 1, priceMinor: 1, note: "" }),
  removeOffer: (member, { orderId, itemId, offerId }) =>
    removeOffer(member, { orderId, itemId, offerId, lockVersion: 1 }),
  saveOrder: (member, { orderId }) =>
    saveOrder(member, { orderId, lockVersion: 1, title: "Stolen", closesAt: null, note: "" }),
  saveOffer: (member, { orderId, itemId, offerId }) =>
    saveOffer(member, { orderId, itemId, offerId, lockVersion: 1, size: 1, priceMinor: 1, note: "" }),
  letLate: (member, { orderId }) => letLate(member, { orderId, userId: member.userId, reason: "Stolen" }),
  askLate: (member, { orderId, itemId }) => askLate(member, { orderId, itemId, amount: 1, lockVersion: 1 }),
  decideLate: (member, { orderId, offerId }) =>
    decideLate(member, { orderId, id: offerId, lockVersion: 1, state: "declined", fingerprint: "" }),
  saveItem: (member, { orderId, itemId }) =>
    saveItem(member, { orderId, itemId, lockVersion: 1, leftOverTo: null, cellsPerPiece: null }),
  proposeSubstitution: (member, { orderId, itemId, otherItemId }) =>
    proposeSubstitution(member, {
      orderId,
      userId: member.userId,
      fromItemId: itemId,
      toItemId: otherItemId,
      ratio: 1,
    }),
  decideSubstitution: (member, { orderId, offerId }) =>
    decideSubstitution(member, { orderId, id: offerId, lockVersion: 1, state: "agreed" }),
  receiveItem: (member, { orderId, itemId }) =>
    receiveItem(member, { orderId, itemId, lockVersion: 1, received: 1, paidMinor: null, allotted: null }),
  handOutShare: (member, { orderId, itemId }) =>
    handOutShare(member, { orderId, itemId, userId: member.userId, lockVersion: 1, amount: 1 }),
  stockShare: (member, { orderId, itemId }) => stockShare(member, { orderId, itemId, lockVersion: 1 }),
};

let owner: Member;
let outsider: Member;
let ids: Ids;
let before: Order;

beforeAll(async () => {
  const [clubA, clubB] = [await newClub("member"), await newClub()];
  owner = clubA.organiser;
  outsider = clubB.organiser; // may do everything, but in another club
  const { sharedBrewId } = await newBrewing(owner, clubA.member);
  const orderId = await newOrdering(owner, sharedBrewId);
  await offerPacks(owner, { orderId, name: "Pale malt", packs: [[5000, 800]] });
  before = await orderAs(owner, orderId);
  const [item, other] = before.items;
  const offerId = before.items.flatMap(({ offers }) => offers)[0]?.id ?? "";
  ids = { orderId, itemId: item?.id ?? "", otherItemId: other?.id ?? "", offerId, sharedBrewId };
});

const nowhere = (): Ids => ({
  orderId: randomUUID(),
  itemId: randomUUID(),
  otherItemId: randomUUID(),
  offerId: randomUUID(),
  sharedBrewId: randomUUID(),
});

const refusal = (write: Promise<unknown>): Promise<unknown> => write.catch((error: unknown) => error);

describe("another club's order", () => {
  it("is not found, and is in no list", async () => {
    expect(await findOrder(outsider, ids.orderId)).toBeNull();
    expect(await listOrders(outsider)).toEqual([]);
    expect(await listOrders(owner)).toHaveLength(1);
  });

  it.each(["", "1", "\u0000", "'; DROP TABLE order_round; --"])("is not found at the address %j either", async (id) => {
    expect(await findOrder(owner, id)).toBeNull();
  });

  it.each(Object.keys(WRITES))("is answered by %s as one that does not exist", async (name) => {
    const write = WRITES[name] ?? (() => Promise.reject(new Error(name)));
    const foreign = await refusal(write(outsider, ids));
    expect(foreign).toMatchObject({ name: "AppError", code: "NOT_FOUND" });
    expect(foreign).toEqual(await refusal(write(outsider, nowhere())));
  });

  it("is unchanged after all those attempts", async () => {
    expect(await orderAs(owner, ids.orderId)).toEqual(before);
  });
});
