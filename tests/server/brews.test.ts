import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { moveBrew } from "@/lib/server/brews/move";
import { planBrew } from "@/lib/server/brews/plan";
import { findBrew, listBrews } from "@/lib/server/brews/reads";
import { findSharedBrew } from "@/lib/server/shared-brews/reads";
import { createSharedBrew } from "@/lib/server/shared-brews/writes";
import { brewOf, newBrewing } from "../support/brewing";
import { join, newClub } from "../support/club";
import { sampleAmbient, sampleEquipment, sampleRecipe } from "../support/sample-recipe";

describe("planBrew", () => {
  it("keeps the recipe, a copy of the kettle and the run sheet that the server computed", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId, recipeId, sharedBrewId } = await newBrewing(organiser, member);
    const brew = await findBrew(member, brewId);
    expect(brew).toMatchObject({
      title: "Test ale",
      recipeId,
      recipeRev: 1,
      sharedBrewId,
      brewerId: member.userId,
      brewerName: "Some member",
      state: "planned",
      startedAt: null,
      lockVersion: 1,
      mayWrite: true,
      dropped: null,
      recipe: sampleRecipe(),
      equipment: sampleEquipment(),
      ambient: sampleAmbient(),
    });
    expect(brew?.runSheet.map((step) => step.name)).toEqual(expect.arrayContaining(["boil", "clean"]));
    const volume = brew?.predicted["fermenter.volume"];
    expect(volume?.value).toBeCloseTo(21, 6); // the volume that the recipe asks for
    expect(volume?.low80).toBeLessThan(21);
    expect(volume?.high80).toBeGreaterThan(21);
  });

  it("is for the owner of the kettle or an organiser", async () => {
    const { organiser, member } = await newClub("member");
    const ids = await newBrewing(organiser, member);
    const other = await join(organiser, "member");
    const own = brewOf({ ...ids, sharedBrewId: null });
    await expect(planBrew(other, own)).rejects.toThrow(
      "Only the owner of this kettle or an organiser plans a brew on it.",
    );
    const { id } = await planBrew(organiser, own);
    expect(await findBrew(organiser, id)).toMatchObject({ brewerId: member.userId });
  });

  it("gives no kettle two sheets of one shared brew", async () => {
    const { organiser, member } = await newClub("member");
    const ids = await newBrewing(organiser, member);
    await expect(planBrew(member, brewOf(ids))).rejects.toThrow("This kettle has a sheet in this shared brew already.");
    expect(await listBrews(member)).toHaveLength(1);
  });

  it("refuses a recipe that does not fit the kettle, and says where", async () => {
    const { organiser, member } = await newClub("member");
    const ids = await newBrewing(organiser, member);
    // 60 L of beer from a kettle of 40 L.
    const tooMuch = brewOf({ ...ids, sharedBrewId: null }, { intoFermenter: 60 });
    await expect(planBrew(member, tooMuch)).rejects.toThrow(/^The recipe does not fit this equipment: .*boil volume/);
    expect(await listBrews(member)).toHaveLength(1);
  });

  it("refuses a shared brew of another recipe", async () => {
    const { organiser, member } = await newClub("member");
    const [one, two] = [await newBrewing(organiser, member), await newBrewing(organiser, member)];
    await expect(planBrew(member, brewOf({ ...one, sharedBrewId: two.sharedBrewId }))).rejects.toThrow(
      "The shared brew is of another recipe or revision.",
    );
  });

  it("is not for those who only read", async () => {
    const { organiser, member, judge } = await newClub("member", "judge");
    const ids = await newBrewing(organiser, member);
    await expect(planBrew(judge, brewOf(ids))).rejects.toThrow("Only members and organisers brew here.");
  });
});

describe("moveBrew", () => {
  it("moves a brew through its states and notes when it began", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId: id } = await newBrewing(organiser, member);
    const states = ["on the kettle", "in the fermenter", "in package", "closed"] as const;
    for (const [index, state] of states.entries()) {
      expect(await moveBrew(member, { id, state, lockVersion: index + 1 })).toEqual({
        ok: true,
        lockVersion: index + 2,
      });
    }
    const brew = await findBrew(member, id);
    expect(brew).toMatchObject({ state: "closed", lockVersion: 5 });
    expect(brew?.startedAt).toBeInstanceOf(Date);
  });

  it("takes one of two simultaneous moves", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId: id } = await newBrewing(organiser, member);
    const move = { id, state: "on the kettle", lockVersion: 1 } as const;
    const outcomes = await Promise.allSettled([moveBrew(member, move), moveBrew(organiser, move)]);
    expect(outcomes.filter((one) => one.status === "fulfilled" && one.value.ok)).toHaveLength(1);
    expect(await findBrew(member, id)).toMatchObject({ state: "on the kettle", lockVersion: 2 });
  });

  it("refuses to jump back", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId: id } = await newBrewing(organiser, member);
    await moveBrew(member, { id, state: "in package", lockVersion: 1 });
    await expect(moveBrew(member, { id, state: "planned", lockVersion: 2 })).rejects.toThrow(
      "A brew that is in package does not become planned.",
    );
  });

  it("is not for other members", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId: id } = await newBrewing(organiser, member);
    const other = await join(organiser, "member");
    await expect(moveBrew(other, { id, state: "on the kettle", lockVersion: 1 })).rejects.toThrow(
      "Only who brews this, their helpers and organisers move it on.",
    );
  });
});

describe("shared brews", () => {
  it("show everybody's sheets", async () => {
    const { organiser, member, guest } = await newClub("member", "guest");
    const { sharedBrewId, brewId } = await newBrewing(organiser, member);
    const shared = await findSharedBrew(guest, sharedBrewId);
    expect(shared).toMatchObject({ title: "Spring brew", state: "open", recipeRev: 1 });
    expect(shared?.brews.map((brew) => [brew.id, brew.mayWrite])).toEqual([[brewId, false]]);
  });

  it("are called by organisers, of a revision that exists", async () => {
    const { organiser, member } = await newClub("member");
    const { recipeId } = await newBrewing(organiser, member);
    const call = { recipeId, rev: 1, title: "Another", window: null, rules: AS_WRITTEN };
    await expect(createSharedBrew(member, call)).rejects.toThrow("Only an organiser does this.");
    await expect(createSharedBrew(organiser, { ...call, rev: 9 })).rejects.toThrow("There is no such recipe here.");
    await expect(createSharedBrew(organiser, { ...call, recipeId: randomUUID() })).rejects.toThrow();
  });
});
