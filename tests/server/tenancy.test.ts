import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import { readingInput } from "@/lib/model/reading-input";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { dropBrew } from "@/lib/server/brews/drop";
import { moveBrew } from "@/lib/server/brews/move";
import { planBrew } from "@/lib/server/brews/plan";
import { findBrew, listBrews } from "@/lib/server/brews/reads";
import { directory } from "@/lib/server/db";
import { findEquipment, listEquipment } from "@/lib/server/equipment/reads";
import { saveEquipment } from "@/lib/server/equipment/writes";
import { findIngredient, listIngredients } from "@/lib/server/ingredients/reads";
import { archiveIngredient, createIngredient, saveIngredient } from "@/lib/server/ingredients/writes";
import { listInvitations } from "@/lib/server/invitations/reads";
import { createInvitation, revokeInvitation } from "@/lib/server/invitations/writes";
import { giveBackLots } from "@/lib/server/lots/give-back";
import { moveLot } from "@/lib/server/lots/move";
import { findLot, listLots } from "@/lib/server/lots/reads";
import { archiveLot, createLot, saveLot } from "@/lib/server/lots/writes";
import { recordReading } from "@/lib/server/readings/writes";
import { listRecipes } from "@/lib/server/recipes/list";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import { saveRevision } from "@/lib/server/recipes/writes";
import { proveMember, type Member } from "@/lib/server/session";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { findSheet } from "@/lib/server/shared-brews/find-sheet";
import { changePart, joinSharedBrew, leaveSharedBrew, markPlanSeen } from "@/lib/server/shared-brews/participants";
import { findSharedBrew, findSharedBrewPlan, listSharedBrews } from "@/lib/server/shared-brews/reads";
import { createSharedBrew } from "@/lib/server/shared-brews/writes";
import { listPeople } from "@/lib/server/spaces/reads";
import { brewOf, newBrewing, parsedEquipment, parsedRecipe, type Brewing } from "../support/brewing";
import { newClub } from "../support/club";
import { hopLot, ownHop } from "../support/lots";
import { joiningOf, planChangeOf } from "../support/shared-brew";
import { sampleReading } from "../support/sample-reading";

interface Ids extends Brewing {
  readonly invitationId: string;
  readonly ingredientId: string;
  readonly lotId: string;
}

/** Every read of the service functions, asked with ids of a club. */
const FINDS: Record<string, (member: Member, ids: Ids) => Promise<unknown>> = {
  findRecipe: (member, { recipeId }) => findRecipe(member, recipeId),
  findRevision: (member, { recipeId }) => findRevision(member, recipeId, 1),
  findEquipment: (member, { equipmentId }) => findEquipment(member, equipmentId),
  findSharedBrew: (member, { sharedBrewId }) => findSharedBrew(member, sharedBrewId),
  findSharedBrewPlan: (member, { sharedBrewId }) => findSharedBrewPlan(member, sharedBrewId),
  findSheet: (member, { sharedBrewId, equipmentId }) => findSheet(member, { sharedBrewId, equipmentId }),
  findBrew: (member, { brewId }) => findBrew(member, brewId),
  findIngredient: (member, { ingredientId }) => findIngredient(member, ingredientId),
  findLot: (member, { lotId }) => findLot(member, lotId),
};

const LISTS: Record<string, (member: Member) => Promise<readonly unknown[]>> = {
  listRecipes,
  listEquipment,
  listSharedBrews,
  listBrews,
  listInvitations,
  listIngredients,
  listLots,
};

/** Every write that names a record. */
const WRITES: Record<string, (member: Member, ids: Ids) => Promise<unknown>> = {
  saveRevision: (member, { recipeId }) => saveRevision(member, { id: recipeId, baseRev: 1, ...parsedRecipe("Stolen") }),
  saveEquipment: (member, { equipmentId }) =>
    saveEquipment(member, { id: equipmentId, baseRev: 1, ...parsedEquipment() }),
  createSharedBrew: (member, { recipeId }) =>
    createSharedBrew(member, { recipeId, rev: 1, title: "Stolen", window: null, rules: AS_WRITTEN }),
  changePlan: (member, { sharedBrewId }) => changePlan(member, planChangeOf(sharedBrewId)),
  joinSharedBrew: (member, { sharedBrewId, equipmentId }) =>
    joinSharedBrew(member, joiningOf(sharedBrewId, equipmentId)),
  changePart: (member, { sharedBrewId, equipmentId }) =>
    changePart(member, { sharedBrewId, equipmentId, lockVersion: 1, brewDay: null, water: null, yeast: "" }),
  leaveSharedBrew: (member, { sharedBrewId, equipmentId }) =>
    leaveSharedBrew(member, { sharedBrewId, equipmentId, lockVersion: 1 }),
  markPlanSeen: (member, { sharedBrewId: id }) => markPlanSeen(member, { id, version: 1 }),
  dropBrew: (member, { brewId: id }) => dropBrew(member, { id, lockVersion: 1, why: "Stolen" }),
  planBrew: (member, ids) => planBrew(member, brewOf(ids)),
  recordReading: (member, { brewId }) => recordReading(member, readingInput.parse(sampleReading(brewId))),
  moveBrew: (member, { brewId }) => moveBrew(member, { id: brewId, state: "on the kettle", lockVersion: 1 }),
  revokeInvitation: (member, { invitationId }) => revokeInvitation(member, invitationId),
  saveIngredient: (member, { ingredientId: id }) => saveIngredient(member, { id, lockVersion: 1, ...ownHop() }),
  archiveIngredient: (member, { ingredientId: id }) =>
    archiveIngredient(member, { id, lockVersion: 1, archived: true }),
  saveLot: (member, { lotId: id }) => saveLot(member, { id, lockVersion: 1, ...hopLot() }),
  archiveLot: (member, { lotId: id }) => archiveLot(member, { id, lockVersion: 1, archived: true }),
  moveLot: (member, { lotId: id }) => moveLot(member, { id, lockVersion: 1, kind: "counted", amount: 0, why: "" }),
  giveBackLots: (member, { brewId }) => giveBackLots(member, brewId),
};

let owner: Member;
let outsider: Member;
let ids: Ids;

beforeAll(async () => {
  const [clubA, clubB] = [await newClub("member"), await newClub()];
  owner = clubA.organiser;
  outsider = clubB.organiser; // may do everything, but in another club
  await createInvitation(owner, { role: "member", email: null, maxUses: 1, days: 7 });
  const [invitation] = await listInvitations(owner);
  ids = { ...(await newBrewing(owner, clubA.member)), invitationId: invitation?.id ?? "", ...(await newStock(owner)) };
});

async function newStock(member: Member): Promise<Pick<Ids, "ingredientId" | "lotId">> {
  const [ingredient, lot] = [await createIngredient(member, ownHop()), await createLot(member, hopLot())];
  return { ingredientId: ingredient.id, lotId: lot.id };
}

const random = (): Ids => ({
  recipeId: randomUUID(),
  equipmentId: randomUUID(),
  sharedBrewId: randomUUID(),
  brewId: randomUUID(),
  invitationId: randomUUID(),
  ingredientId: randomUUID(),
  lotId: randomUUID(),
});

async function refusal(write: Promise<unknown>): Promise<unknown> {
  try {
    return await write;
  } catch (error) {
    return error;
  }
}

describe("another club's records", () => {
  it.each(Object.keys(FINDS))("are not found by %s, and are by their own club", async (name) => {
    const find = FINDS[name] ?? (() => Promise.reject(new Error(name)));
    expect(await find(outsider, ids)).toBeNull();
    expect(await find(owner, ids)).not.toBeNull();
  });

  it.each(Object.keys(LISTS))("are not in %s, and are in their own club's", async (name) => {
    const list = LISTS[name] ?? (() => Promise.reject(new Error(name)));
    expect(await list(outsider)).toEqual([]);
    expect(await list(owner)).not.toEqual([]);
  });

  it.each(Object.keys(WRITES))("are answered by %s as records that do not exist", async (name) => {
    const write = WRITES[name] ?? (() => Promise.reject(new Error(name)));
    const foreign = await refusal(write(outsider, ids));
    expect(foreign).toMatchObject({ name: "AppError", code: "NOT_FOUND" });
    expect(foreign).toEqual(await refusal(write(outsider, random())));
  });

  it.each(["", "1", "../..", "\u0000", "'; DROP TABLE brew; --", "x".repeat(500)])(
    "are not found at the address %j either",
    async (id) => {
      const nonsense: Ids = {
        ...{ recipeId: id, equipmentId: id, sharedBrewId: id, brewId: id, invitationId: id },
        ...{ ingredientId: id, lotId: id },
      };
      for (const find of Object.values(FINDS)) expect(await find(owner, nonsense)).toBeNull();
      expect(await findRevision(owner, ids.recipeId, id.length / 2 - 1)).toBeNull();
      expect(await proveMember(owner, id)).toBeNull();
    },
  );

  it("are unchanged after all those attempts", async () => {
    expect(await findRecipe(owner, ids.recipeId)).toMatchObject({ headRev: 1, title: "Test ale" });
    expect(await findEquipment(owner, ids.equipmentId)).toMatchObject({ rev: 1 });
    expect(await findBrew(owner, ids.brewId)).toMatchObject({ state: "planned", readings: [] });
    expect(await listSharedBrews(owner)).toHaveLength(1);
    expect(await listInvitations(owner)).toMatchObject([{ revokedAt: null }]);
    expect(await findLot(owner, ids.lotId)).toMatchObject({ lockVersion: 1, onHand: 250, isArchived: false });
    expect(await findIngredient(owner, ids.ingredientId)).toMatchObject({ lockVersion: 1, isArchived: false });
  });
});

describe("people", () => {
  it("are seen by their own club only", async () => {
    const names = (await listPeople(outsider)).map((person) => person.userId);
    expect(names).toEqual([outsider.userId]);
    expect(await listPeople(owner)).toHaveLength(2);
  });

  it("are members of no club that they do not belong to, and of none that does not exist", async () => {
    expect(await proveMember(outsider, owner.spaceSlug)).toBeNull();
    expect(await proveMember(outsider, "no-such-club")).toBeNull();
  });

  it("who left are members no more at the next request", async () => {
    const { member } = await newClub("member");
    expect(await proveMember(member, member.spaceSlug)).not.toBeNull();
    await directory.membership.update({
      where: { spaceId_userId: { spaceId: member.spaceId, userId: member.userId } },
      data: { status: "left" },
    });
    expect(await proveMember(member, member.spaceSlug)).toBeNull();
  });
});
