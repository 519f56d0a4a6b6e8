import { DAY_MS, dayOf } from "@/lib/model/plain-day";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import type { Member } from "@/lib/server/session";
import { joinSharedBrew } from "@/lib/server/shared-brews/participants";
import { createSharedBrew } from "@/lib/server/shared-brews/writes";
import { moveOrder } from "@/lib/server/orders/move";
import { findOrder } from "@/lib/server/orders/reads";
import { handOutShare, receiveItem } from "@/lib/server/orders/receive";
import { proposeSubstitution } from "@/lib/server/orders/substitutions";
import { addOffer } from "@/lib/server/orders/offers";
import { addThing, createOrder, saveWant } from "@/lib/server/orders/writes";
import type { Order, OrderItem } from "@/lib/model/order/order";
import type { NewThing } from "@/lib/model/order/order-input";
import type { OrderState } from "@/lib/model/order/order-words";

type As = <Result>(key: string, act: (member: Member) => Promise<Result>) => Promise<Result>;

interface DemoOrders {
  readonly as: As;
  readonly recipeId: string;
  readonly kettles: readonly { readonly id: string; readonly owner: string }[];
}

const CURRENCY = "EUR";

/** Invented packs: size in g, mL or pieces, price in cents. */
const SACKS = [
  [25_000, 3400],
  [5000, 890],
  [1000, 230],
] as const;
const HOP_BAGS = [
  [100, 590],
  [50, 340],
] as const;
const PACKS: Readonly<Record<OrderItem["kind"], readonly (readonly [size: number, priceMinor: number])[]>> = {
  fermentable: SACKS,
  hop: HOP_BAGS,
  yeast: [[1, 420]],
  salt: [[500, 380]],
  acid: [[500, 690]],
  other: [
    [1000, 1990],
    [100, 290],
  ],
};

/** Who brews the porter. */
const BREWERS: readonly string[] = ["organiser", "member", "bero", "wilma", "petra"];

/** A shared brew that is only called, an open order for it with wishes and a proposal, and an older order, handed out. */
export async function seedOrders({ as, recipeId, kettles }: DemoOrders): Promise<void> {
  await seedPastOrder(as);
  const sharedBrewId = await seedWinterBrew({ as, recipeId, kettles });
  const orderId = await as("organiser", async (member) => {
    const closesAt = new Date(Date.now() + 6 * DAY_MS);
    const note = "From the maltster in the invented town of Drayford; Bero has the van.";
    return (await createOrder(member, { title: "Porter order", sharedBrewId, currency: CURRENCY, closesAt, note })).id;
  });
  await want(as, "tamsin", { orderId, kind: "fermentable", name: "Pilsner malt", unit: "g", amount: 5000 });
  await want(as, "petra", { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 250 });
  await want(as, "wilma", { orderId, kind: "other", name: "Crown caps", unit: "pcs", amount: 400 });
  await offerEverything(as, orderId);
  await as("organiser", async (member) => {
    const { items } = await present(member, orderId);
    const hops = items.filter(({ kind }) => kind === "hop");
    const malts = items.filter(({ kind }) => kind === "fermentable");
    const [from, to] = hops.length > 1 ? hops : malts;
    const share = from?.shares.find(({ needed }) => needed > 0);
    if (from === undefined || to === undefined || share === undefined) return;
    await proposeSubstitution(member, {
      orderId,
      userId: share.userId,
      fromItemId: from.id,
      toItemId: to.id,
      ratio: 1,
    });
  });
}

async function seedWinterBrew({ as, recipeId, kettles }: DemoOrders): Promise<string> {
  const window = { from: dayOf(new Date(Date.now() + 20 * DAY_MS)), to: dayOf(new Date(Date.now() + 27 * DAY_MS)) };
  const call = { recipeId, rev: 1, title: "Winter shared brew: Coal Quay Porter", window, rules: AS_WRITTEN };
  const { id: sharedBrewId } = await as("organiser", (member) => createSharedBrew(member, call));
  for (const key of BREWERS) {
    const equipmentId = kettles.find(({ owner }) => owner === key)?.id;
    if (equipmentId === undefined) throw new Error(`${key} has no kettle in the demo`);
    await as(key, (member) =>
      joinSharedBrew(member, { sharedBrewId, equipmentId, planVersion: 1, brewDay: null, water: null, yeast: "" }),
    );
  }
  return sharedBrewId;
}

async function seedPastOrder(as: As): Promise<void> {
  const orderId = await as("organiser", async (member) => {
    const order = { title: "Summer malt order", sharedBrewId: null, currency: CURRENCY, closesAt: null, note: "" };
    return (await createOrder(member, order)).id;
  });
  for (const [key, amount] of [
    ["organiser", 12_400],
    ["tamsin", 9300],
    ["bero", 10_300],
  ] as const) {
    await want(as, key, { orderId, kind: "fermentable", name: "Pale ale malt", unit: "g", amount });
  }
  await want(as, "tamsin", { orderId, kind: "acid", name: "Lactic acid 80 %", unit: "mL", amount: 120 });
  await offerEverything(as, orderId);
  await as("organiser", async (member) => {
    await step(member, orderId, "locked");
    await step(member, orderId, "placed");
    for (const { id: itemId, lockVersion, purchase } of (await present(member, orderId)).items) {
      const received = purchase?.amount ?? 0;
      await receiveItem(member, { orderId, itemId, lockVersion, received, paidMinor: null, allotted: null });
    }
    await step(member, orderId, "received");
    for (const { id: itemId, shares } of (await present(member, orderId)).items) {
      for (const { userId, lockVersion, allotted } of shares) {
        await handOutShare(member, { orderId, itemId, userId, lockVersion, amount: allotted });
      }
    }
    await step(member, orderId, "handed out");
  });
}

/** Wishes for one thing add up in one item: the first names it, the others join. */
async function want(as: As, key: string, { orderId, amount, ...thing }: NewThing): Promise<void> {
  await as(key, async (member) => {
    const known = (await present(member, orderId)).items.find(
      ({ kind, name }) => kind === thing.kind && name === thing.name,
    );
    if (known === undefined) await addThing(member, { orderId, amount, ...thing });
    else await saveWant(member, { orderId, itemId: known.id, amount, lockVersion: 0 });
  });
}

async function offerEverything(as: As, orderId: string): Promise<void> {
  await as("organiser", async (member) => {
    for (const { id: itemId, kind } of (await present(member, orderId)).items) {
      for (const [size, priceMinor] of PACKS[kind]) {
        await addOffer(member, { orderId, itemId, size, priceMinor, note: "Invented price" });
      }
    }
  });
}

async function step(member: Member, orderId: string, state: OrderState): Promise<void> {
  const { lockVersion, fingerprint } = await present(member, orderId);
  await moveOrder(member, { orderId, state, lockVersion, fingerprint });
}

async function present(member: Member, orderId: string): Promise<Order> {
  const order = await findOrder(member, orderId);
  if (order === null) throw new Error("the demo order is not there");
  return order;
}
