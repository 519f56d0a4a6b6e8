import { describe, expect, it } from "vitest";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { participationChange } from "@/lib/model/participation";
import { planBrew } from "@/lib/server/brews/plan";
import { listNotices } from "@/lib/server/notices/reads";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { changePart, joinSharedBrew, leaveSharedBrew } from "@/lib/server/shared-brews/participants";
import { findSharedBrewPlan } from "@/lib/server/shared-brews/reads";
import { listSheets } from "@/lib/server/shared-brews/sheets";
import type { Member } from "@/lib/server/session";
import { brewOf } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { callSharedBrew, joiningOf, newKettle, planChangeOf } from "../../support/shared-brew";
import { sampleRecipe } from "../../support/sample-recipe";

const SATURDAY = { day: "2027-03-20", time: "09:30", zone: "Europe/Berlin" };

const parts = async (member: Member, id: string) => (await findSharedBrewPlan(member, id))?.participants ?? [];

describe("joinSharedBrew", () => {
  it("keeps the kettle, the day in its zone, the water and the yeast", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    const equipmentId = await newKettle(member);
    const water = { calcium: 20, magnesium: 3, sodium: 8, sulfate: 10, chloride: 12, bicarbonate: 60 };
    await joinSharedBrew(member, joiningOf(sharedBrewId, equipmentId, { brewDay: SATURDAY, water, yeast: "Lot 7" }));
    // Berlin is an hour ahead of UTC until the last Sunday of March.
    const brewAt = new Date("2027-03-20T08:30:00Z");
    expect(await parts(organiser, sharedBrewId)).toMatchObject([
      { userId: member.userId, equipmentId, brewAt, zone: "Europe/Berlin", water, yeast: "Lot 7", seenVersion: 1 },
    ]);
  });

  it("refuses a day outside the window, and names both", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    const late = joiningOf(sharedBrewId, await newKettle(member), { brewDay: { ...SATURDAY, day: "2027-03-29" } });
    await expect(joinSharedBrew(member, late)).rejects.toThrow(
      "Brew day 2027-03-29 is outside the days of the plan, 2027-03-14 to 2027-03-28.",
    );
    expect(await parts(member, sharedBrewId)).toEqual([]);
  });

  it("gives a kettle one place, however often it is asked for at once", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    const input = joiningOf(sharedBrewId, await newKettle(member));
    const outcomes = await Promise.allSettled([1, 2, 3].map(() => joinSharedBrew(member, input)));
    expect(outcomes.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    expect(await parts(member, sharedBrewId)).toHaveLength(1);
  });

  it("closes with the state, and refuses a plan that has moved on", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    const equipmentId = await newKettle(member);
    await changePlan(organiser, planChangeOf(sharedBrewId));
    await expect(joinSharedBrew(member, joiningOf(sharedBrewId, equipmentId))).rejects.toThrow(
      "The plan has changed to version 2: look at it again.",
    );
    await changePlan(organiser, planChangeOf(sharedBrewId, { baseVersion: 2, state: "closed" }));
    const input = joiningOf(sharedBrewId, equipmentId, { planVersion: 3 });
    await expect(joinSharedBrew(member, input)).rejects.toThrow("The shared brew is closed.");
  });

  it("lets an organiser enter somebody, who is told", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    const equipmentId = await newKettle(member);
    await joinSharedBrew(organiser, joiningOf(sharedBrewId, equipmentId));
    expect(await parts(member, sharedBrewId)).toMatchObject([{ userId: member.userId }]);
    expect(await listNotices(member)).toMatchObject([{ kind: "entered", payload: { kettle: "Test kettle" } }]);
  });

  it("is not for somebody else’s kettle, for those who only read, nor from another club", async () => {
    const { organiser, member, judge } = await newClub("member", "judge");
    const other = await join(organiser, "member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    const input = joiningOf(sharedBrewId, await newKettle(member));
    await expect(joinSharedBrew(other, input)).rejects.toThrow("Only the owner of this kettle or an organiser");
    await expect(joinSharedBrew(judge, input)).rejects.toThrow("Only members and organisers brew here.");
    const { organiser: stranger } = await newClub();
    await expect(joinSharedBrew(stranger, input)).rejects.toThrow("There is no such shared brew here.");
    expect(await parts(member, sharedBrewId)).toEqual([]);
  });
});

describe("a place in a shared brew", () => {
  async function joined() {
    const club = await newClub("member");
    const { recipeId, sharedBrewId } = await callSharedBrew(club.organiser);
    const equipmentId = await newKettle(club.member);
    await joinSharedBrew(club.member, joiningOf(sharedBrewId, equipmentId));
    return { ...club, recipeId, sharedBrewId, equipmentId };
  }

  it("is changed by one of two at once", async () => {
    const { organiser, member, sharedBrewId, equipmentId } = await joined();
    const plain = { sharedBrewId, equipmentId, lockVersion: 1, brewDay: SATURDAY, water: null, yeast: "" };
    const input = participationChange.parse(plain);
    const outcomes = await Promise.all([changePart(member, input), changePart(organiser, input)]);
    expect(outcomes).toContainEqual({ ok: true, lockVersion: 2 });
    expect(outcomes).toContainEqual({ ok: false, reason: "stale" });
  });

  it("is given up, and taken again", async () => {
    const { member, sharedBrewId, equipmentId } = await joined();
    expect(await leaveSharedBrew(member, { sharedBrewId, equipmentId, lockVersion: 1 })).toMatchObject({ ok: true });
    expect(await parts(member, sharedBrewId)).toEqual([]);
    await joinSharedBrew(member, joiningOf(sharedBrewId, equipmentId));
    expect(await parts(member, sharedBrewId)).toMatchObject([{ lockVersion: 3 }]);
  });

  it("is kept while a brew is planned on the kettle", async () => {
    const { member, recipeId, sharedBrewId, equipmentId } = await joined();
    await planBrew(member, brewOf({ recipeId, equipmentId, sharedBrewId }));
    await expect(leaveSharedBrew(member, { sharedBrewId, equipmentId, lockVersion: 1 })).rejects.toThrow(
      "A brew is planned on this kettle",
    );
    expect(await parts(member, sharedBrewId)).toHaveLength(1);
  });
});

describe("listSheets", () => {
  it("gives everybody the recipe under the rules, and a planned brew its own", async () => {
    const { organiser, member } = await newClub("member");
    const { recipeId, sharedBrewId } = await callSharedBrew(organiser);
    const [mine, theirs] = [await newKettle(organiser), await newKettle(member)];
    await joinSharedBrew(organiser, joiningOf(sharedBrewId, mine));
    await joinSharedBrew(member, joiningOf(sharedBrewId, theirs));
    const rules = { ...AS_WRITTEN, volume: true, yeast: { same: false, lot: "" } };
    await changePlan(organiser, planChangeOf(sharedBrewId, { rules }));
    const { id: brewId } = await planBrew(
      member,
      brewOf({ recipeId, equipmentId: theirs, sharedBrewId }, { intoFermenter: 19 }),
    );

    const sheets = await listSheets(member, sharedBrewId);
    expect(sheets).toMatchObject([
      { userId: organiser.userId, kettleName: "Test kettle", brewId: null, recipe: { intoFermenter: 21 } },
      { userId: member.userId, equipmentId: theirs, brewId, recipe: { intoFermenter: 19 } },
    ]);
    // On the kettle that it was written for, the recipe comes out as it was written.
    sampleRecipe().fermentables.forEach(({ kg }, i) =>
      expect(sheets[0]?.recipe.fermentables[i]?.kg, String(i)).toBeCloseTo(kg, 4),
    );
  });

  it("gives another club nothing", async () => {
    const { organiser } = await newClub();
    const { sharedBrewId } = await callSharedBrew(organiser);
    await joinSharedBrew(organiser, joiningOf(sharedBrewId, await newKettle(organiser)));
    const { organiser: stranger } = await newClub();
    expect(await listSheets(stranger, sharedBrewId)).toEqual([]);
    expect(await listSheets(organiser, sharedBrewId)).toHaveLength(1);
  });
});
