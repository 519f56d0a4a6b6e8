import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { moveBrew } from "@/lib/server/brews/move";
import { planBrew } from "@/lib/server/brews/plan";
import { listBrews } from "@/lib/server/brews/reads";
import { createEquipment } from "@/lib/server/equipment/writes";
import { listBrewLots } from "@/lib/server/lots/brew-lots";
import { giveBackLots } from "@/lib/server/lots/give-back";
import { findLot, listMovements } from "@/lib/server/lots/reads";
import { archiveLot, createLot } from "@/lib/server/lots/writes";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { brewOf, parsedEquipment, parsedRecipe } from "../support/brewing";
import { join, newClub } from "../support/club";
import { acidLot, hopLot, maltLot, saltLot, yeastLot } from "../support/lots";

/** A recipe of 4 kg of malt, and 30 g of one hop in two additions, with the lots given. */
async function newPlan(member: Member) {
  const { id: recipeId } = await createRecipe(member, parsedRecipe());
  const { id: equipmentId } = await createEquipment(member, parsedEquipment());
  return (lots: Record<string, string>) => ({ ...brewOf({ recipeId, equipmentId, sharedBrewId: null }), lots });
}

const onHand = async (member: Member, id: string): Promise<number | undefined> => (await findLot(member, id))?.onHand;

describe("a brew that is planned with lots", () => {
  it("takes them once, notes each row's lot, and the history says by which brew", async () => {
    const { member } = await newClub("member");
    const plan = await newPlan(member);
    const { id: malt } = await createLot(member, maltLot({ owner: "me" }));
    const { recipe } = plan({});
    const kg = recipe.fermentables[0]?.kg ?? NaN;
    const { id } = await planBrew(member, plan({ "fermentables.0": malt }));
    expect(await listBrewLots(member, id)).toEqual([
      { path: "fermentables.0", lotId: malt, label: "Sack 7", unit: "kg", needed: kg, taken: kg, isReturned: false },
    ]);
    expect(await onHand(member, malt)).toBeCloseTo(25 - kg, 9);
    expect(await listMovements(member, malt)).toMatchObject([
      { kind: "used", change: -kg, brew: { id, title: "Test ale" } },
      { kind: "counted" },
    ]);
  });

  it("takes what there is of a lot that is too small, and is short of the rest", async () => {
    const { member } = await newClub("member");
    const plan = await newPlan(member);
    const { id: malt } = await createLot(member, maltLot({ onHand: 1.5 }));
    const { id } = await planBrew(member, plan({ "fermentables.0": malt }));
    const [row] = await listBrewLots(member, id);
    expect(row).toMatchObject({ taken: 1.5, needed: plan({}).recipe.fermentables[0]?.kg });
    expect(await onHand(member, malt)).toBe(0);
  });

  it("takes whole packs of yeast by their living cells, salts in grams and acid in millilitres, and puts them back", async () => {
    const { member } = await newClub("member");
    const plan = await newPlan(member);
    const { id: yeast } = await createLot(member, yeastLot(50));
    const { id: gypsum } = await createLot(member, saltLot("Gypsum"));
    const { id: acid } = await createLot(member, acidLot(0.8, 1.19));
    const { id } = await planBrew(member, plan({ yeast, "salts.gypsum": gypsum, acid }));
    const rows = await listBrewLots(member, id);
    // 21 L at some 11 to 13 °P and 0.75 million for each mL and °P are 170 to 210 billion cells: four or five packs of 50.
    const packs = rows.find(({ path }) => path === "yeast");
    expect([4, 5]).toContain(packs?.needed);
    expect(packs).toMatchObject({ unit: "pcs", taken: packs?.needed });
    expect(rows.find(({ path }) => path === "salts.gypsum")).toMatchObject({ needed: 4, taken: 4, unit: "g" });
    expect(rows.find(({ path }) => path === "acid")).toMatchObject({ needed: 4, taken: 4, unit: "mL" });
    expect(await onHand(member, yeast)).toBe(10 - (packs?.taken ?? NaN));
    expect(await onHand(member, gypsum)).toBe(496);
    expect(await onHand(member, acid)).toBe(246);
    expect(await listMovements(member, acid)).toMatchObject([{ kind: "used", change: -4, brew: { id } }, {}]);
    expect(await giveBackLots(member, id)).toEqual({ lots: 3 });
    expect(await Promise.all([yeast, gypsum, acid].map((lot) => onHand(member, lot)))).toEqual([10, 500, 250]);
  });

  it("takes one pack of yeast of which no count is known, and never a salt for an acid", async () => {
    const { member } = await newClub("member");
    const plan = await newPlan(member);
    const { id: yeast } = await createLot(member, yeastLot(null));
    const { id } = await planBrew(member, plan({ yeast }));
    expect(await listBrewLots(member, id)).toMatchObject([{ path: "yeast", needed: 1, taken: 1 }]);
    const { id: gypsum } = await createLot(member, saltLot("Gypsum"));
    await expect(planBrew(member, plan({ acid: gypsum }))).rejects.toThrow("The lot Jar is no acid.");
  });

  it("puts them back once, while it is only planned", async () => {
    const { member, organiser } = await newClub("member");
    const other = await join(organiser, "member");
    const plan = await newPlan(member);
    const { id: malt } = await createLot(member, maltLot());
    const { id } = await planBrew(member, plan({ "fermentables.0": malt }));
    await expect(giveBackLots(other, id)).rejects.toThrow("Only who brews this, their helpers and organisers");
    const answers = await Promise.allSettled(Array.from({ length: 5 }, () => giveBackLots(member, id)));
    expect(answers.filter(({ status }) => status === "fulfilled").length).toBeGreaterThanOrEqual(1);
    expect(await giveBackLots(member, id)).toEqual({ lots: 0 });
    expect(await onHand(member, malt)).toBe(25);
    const kinds = (await listMovements(member, malt)).map(({ kind }) => kind);
    expect(kinds).toEqual(["returned", "used", "counted"]);
    expect(await listBrewLots(member, id)).toMatchObject([{ isReturned: true }]);
  });

  it("keeps what it took once it is on the kettle", async () => {
    const { member } = await newClub("member");
    const plan = await newPlan(member);
    const { id: malt } = await createLot(member, maltLot());
    const { id } = await planBrew(member, plan({ "fermentables.0": malt }));
    await moveBrew(member, { id, state: "on the kettle", lockVersion: 1 });
    await expect(giveBackLots(member, id)).rejects.toThrow("The brew is on the kettle");
    expect(await onHand(member, malt)).toBeLessThan(25);
  });

  it("never takes a lot below nothing, however many brews are planned at once", async () => {
    const { member } = await newClub("member");
    const plan = await newPlan(member);
    const kg = plan({}).recipe.fermentables[0]?.kg ?? NaN;
    const { id: malt } = await createLot(member, maltLot({ onHand: 2.5 * kg }));
    const { id: hops } = await createLot(member, hopLot());
    const brews = await Promise.all(
      Array.from({ length: 6 }, () => planBrew(member, plan({ "fermentables.0": malt, "hops.0": hops }))),
    );
    const taken = await Promise.all(
      brews.map(
        async ({ id }) => (await listBrewLots(member, id)).find(({ path }) => path === "fermentables.0")?.taken,
      ),
    );
    expect(taken.reduce<number>((sum, each) => sum + (each ?? NaN), 0)).toBeCloseTo(2.5 * kg, 6);
    expect(await onHand(member, malt)).toBe(0);
    const movements = await listMovements(member, malt);
    expect(movements.reduce((sum, { change }) => sum + change, 0)).toBeCloseTo(0, 6);
  });

  it.each([
    ["a lot that is not there", () => Promise.resolve(randomUUID()), "There is no such lot here."],
    [
      "hops in the place of malt",
      async (member: Member) => (await createLot(member, hopLot())).id,
      "The lot Harvest 2026 is no fermentable.",
    ],
    [
      "a lot that was put away",
      async (member: Member) => {
        const { id } = await createLot(member, maltLot());
        await archiveLot(member, { id, lockVersion: 1, archived: true });
        return id;
      },
      "The lot Sack 7 has been put away.",
    ],
  ])("is refused with %s, and nothing of it is kept", async (_what, lotOf, message) => {
    const { member } = await newClub("member");
    const plan = await newPlan(member);
    await expect(planBrew(member, plan({ "fermentables.0": await lotOf(member) }))).rejects.toThrow(message);
    expect(await listBrews(member)).toEqual([]);
  });

  it("is refused with a lot of a member who neither brews nor plans it", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const plan = await newPlan(member);
    const { id } = await createLot(other, maltLot({ owner: "me" }));
    await expect(planBrew(member, plan({ "fermentables.0": id }))).rejects.toThrow("belongs to another member");
    expect(await onHand(member, id)).toBe(25);
  });
});
