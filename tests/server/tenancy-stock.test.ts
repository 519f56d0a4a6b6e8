import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import { planBrew } from "@/lib/server/brews/plan";
import { createEquipment } from "@/lib/server/equipment/writes";
import { findUses } from "@/lib/server/ingredients/uses";
import { createIngredient } from "@/lib/server/ingredients/writes";
import { listBrewLots } from "@/lib/server/lots/brew-lots";
import { listLosses, lotFigures } from "@/lib/server/lots/figures";
import { listOffers } from "@/lib/server/lots/offers";
import { listMovements } from "@/lib/server/lots/reads";
import { createLot } from "@/lib/server/lots/writes";
import { listOnHand } from "@/lib/server/orders/on-hand";
import { listOrderers } from "@/lib/server/orders/people";
import { listOrders } from "@/lib/server/orders/reads";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { brewOf, parsedEquipment, parsedRecipe } from "../support/brewing";
import { newClub } from "../support/club";
import { hopLot, maltLot, ownHop } from "../support/lots";
import { newOrdering } from "../support/ordering";

interface Ids {
  readonly lotId: string;
  readonly brewId: string;
  readonly brewerId: string;
}

/** Every read of ingredients, lots and orders that answers with a list; here by how many things it tells of. */
const TOLD: Record<string, (member: Member, ids: Ids) => Promise<number>> = {
  listMovements: async (member, { lotId }) => (await listMovements(member, lotId)).length,
  lotFigures: async (member, { lotId }) => (await lotFigures(member, [lotId])).size,
  listBrewLots: async (member, { brewId }) => (await listBrewLots(member, brewId)).length,
  listOffers: async (member, { brewerId }) => (await listOffers(member, brewerId)).length,
  listOnHand: async (member) => (await listOnHand(member)).length,
  listLosses: async (member) => ((await listLosses(member))("Garden hop") === null ? 0 : 1),
  findUses: async (member) => {
    const { recipes, brews } = await findUses(member, "Pale malt", maltUse);
    return recipes.length + brews.length;
  },
  listOrders: async (member) => (await listOrders(member)).length,
};

const { what: hop } = ownHop();
// Only the kind is asked for; a name is looked for among the fermentables.
const maltUse = { ...hop, kind: "fermentable" } as unknown as Parameters<typeof findUses>[2];

let owner: Member;
let outsider: Member;
let ids: Ids;

beforeAll(async () => {
  const [clubA, clubB] = [await newClub(), await newClub()];
  owner = clubA.organiser;
  outsider = clubB.organiser; // may do everything, but in another club
  await createIngredient(owner, ownHop());
  await createLot(owner, hopLot({ owner: "me" }));
  const { id: lotId } = await createLot(owner, maltLot());
  const { id: recipeId } = await createRecipe(owner, parsedRecipe());
  const { id: equipmentId } = await createEquipment(owner, parsedEquipment());
  const plan = { ...brewOf({ recipeId, equipmentId, sharedBrewId: null }), lots: { "fermentables.0": lotId } };
  const { id: brewId } = await planBrew(owner, plan);
  await newOrdering(owner);
  ids = { lotId, brewId, brewerId: owner.userId };
});

describe("another club's stock", () => {
  it.each(Object.keys(TOLD))("is not told by %s, and its own club's is", async (name) => {
    const told = TOLD[name] ?? (() => Promise.reject(new Error(name)));
    expect(await told(owner, ids)).toBeGreaterThan(0);
    expect(await told(outsider, ids)).toBe(0);
  });

  it.each(["", "1", "\u0000", "'; DROP TABLE ingredient_lot; --", randomUUID()])(
    "has no history at the address %j",
    async (id) => {
      expect(await listMovements(owner, id)).toEqual([]);
      expect(await listBrewLots(owner, id)).toEqual([]);
    },
  );

  it("is ordered by people of the club only", async () => {
    expect((await listOrderers(outsider)).map(({ userId }) => userId)).toEqual([outsider.userId]);
  });
});
