import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { newRecipe } from "@/lib/model/recipe-content";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { planBrew } from "@/lib/server/brews/plan";
import { listNotices } from "@/lib/server/notices/reads";
import { saveRevision } from "@/lib/server/recipes/writes";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { joinSharedBrew, markPlanSeen } from "@/lib/server/shared-brews/participants";
import { findPlanBehind } from "@/lib/server/shared-brews/plan-behind";
import { findSharedBrew, findSharedBrewPlan, listPlanVersions } from "@/lib/server/shared-brews/reads";
import { brewOf } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { callSharedBrew, joiningOf, newKettle, planChangeOf } from "../../support/shared-brew";
import { sampleContent, sampleRecipe } from "../../support/sample-recipe";
import { connectAs } from "../../support/sql-session";

describe("a brew under an earlier plan", () => {
  it("is told from which version to which, and one under the newest is told nothing", async () => {
    const { organiser } = await newClub();
    const called = await callSharedBrew(organiser);
    const { sharedBrewId } = called;
    const equipmentId = await newKettle(organiser);
    const { id } = await planBrew(organiser, brewOf({ ...called, equipmentId }));
    const { id: alone } = await planBrew(organiser, brewOf({ ...called, equipmentId, sharedBrewId: null }));
    expect(await findPlanBehind(organiser, id)).toBeNull();
    await changePlan(organiser, planChangeOf(sharedBrewId));
    await changePlan(organiser, planChangeOf(sharedBrewId, { baseVersion: 2, window: null }));
    expect(await findPlanBehind(organiser, id)).toMatchObject({
      sharedBrewId,
      equipmentId,
      planned: { version: 1, window: { from: "2027-03-14" } },
      present: { version: 3, window: null },
    });
    expect(await findPlanBehind(organiser, alone)).toBeNull();
    const { organiser: stranger } = await newClub();
    expect(await findPlanBehind(stranger, id)).toBeNull();
  });
});

describe("changePlan", () => {
  it("adds a version and keeps the one before word for word", async () => {
    const { organiser } = await newClub();
    const { sharedBrewId } = await callSharedBrew(organiser);
    const [first] = await listPlanVersions(organiser, sharedBrewId);
    const rules = { ...AS_WRITTEN, bitterness: false };
    expect(await changePlan(organiser, planChangeOf(sharedBrewId, { rules }))).toEqual({ ok: true, version: 2 });

    const versions = await listPlanVersions(organiser, sharedBrewId);
    expect(versions).toMatchObject([
      { version: 2, window: { from: "2027-04-03", to: "2027-04-18" }, rules, note: "The malt comes later" },
      { version: 1, window: { from: "2027-03-14", to: "2027-03-28" }, rules: AS_WRITTEN, note: "" },
    ]);
    expect(versions[1]).toEqual(first);
    expect(await findSharedBrew(organiser, sharedBrewId)).toMatchObject({
      version: 2,
      plannedAt: new Date("2027-04-03T00:00:00Z"),
      plan: { version: 2, madeByName: "Olga Organiser" },
    });
  });

  it("lets one of two organisers through who change the same version, and tells the other", async () => {
    const { organiser } = await newClub();
    const second = await join(organiser, "organiser");
    const { sharedBrewId } = await callSharedBrew(organiser);
    const outcomes = await Promise.all([
      changePlan(organiser, planChangeOf(sharedBrewId)),
      changePlan(second, planChangeOf(sharedBrewId, { state: "closed" })),
    ]);
    expect(outcomes).toContainEqual({ ok: true, version: 2 });
    expect(outcomes).toContainEqual({ ok: false, reason: "stale", version: 2 });
    expect(await listPlanVersions(organiser, sharedBrewId)).toHaveLength(2);
  });

  it("makes no version of nothing, nor of a revision that is not there", async () => {
    const { organiser } = await newClub();
    const { sharedBrewId } = await callSharedBrew(organiser);
    const window = { from: "2027-03-14", to: "2027-03-28" };
    expect(await changePlan(organiser, planChangeOf(sharedBrewId, { window }))).toEqual({
      ok: false,
      reason: "unchanged",
    });
    await expect(changePlan(organiser, planChangeOf(sharedBrewId, { rev: 7 }))).rejects.toThrow(
      "There is no such recipe",
    );
    expect(await listPlanVersions(organiser, sharedBrewId)).toHaveLength(1);
  });

  it("is for organisers, in their own club", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    await expect(changePlan(member, planChangeOf(sharedBrewId))).rejects.toThrow("Only an organiser does this.");
    const { organiser: stranger } = await newClub();
    await expect(changePlan(stranger, planChangeOf(sharedBrewId))).rejects.toThrow("no such shared brew");
    await expect(changePlan(organiser, planChangeOf(randomUUID()))).rejects.toThrow("no such shared brew");
    expect(await listPlanVersions(stranger, sharedBrewId)).toEqual([]);
  });

  it("tells everybody else who takes part, once each, and nobody who left the plan alone", async () => {
    const { organiser, member } = await newClub("member");
    const bystander = await join(organiser, "member");
    const { sharedBrewId } = await callSharedBrew(organiser);
    for (const kettle of [await newKettle(member), await newKettle(member)]) {
      await joinSharedBrew(member, joiningOf(sharedBrewId, kettle));
    }
    await joinSharedBrew(organiser, joiningOf(sharedBrewId, await newKettle(organiser)));
    await changePlan(organiser, planChangeOf(sharedBrewId));
    expect(await listNotices(member)).toMatchObject([
      { kind: "plan changed", payload: { sharedBrewId, title: "Spring brew", version: 2 }, readAt: null },
    ]);
    expect(await listNotices(organiser)).toEqual([]);
    expect(await listNotices(bystander)).toEqual([]);
  });

  it("leaves a brew that is planned as it was, under the version that it was planned under", async () => {
    const { organiser, member } = await newClub("member");
    const { recipeId, sharedBrewId } = await callSharedBrew(organiser);
    const equipmentId = await newKettle(member);
    await planBrew(member, brewOf({ recipeId, equipmentId, sharedBrewId }));
    const revised = newRecipe.parse({
      title: "Test ale",
      content: { ...sampleContent(), recipe: { ...sampleRecipe(), fermentables: [sampleRecipe().fermentables[0]] } },
      message: "",
    });
    await saveRevision(organiser, { id: recipeId, baseRev: 1, ...revised });
    await changePlan(organiser, planChangeOf(sharedBrewId, { rev: 2 }));

    const shared = await findSharedBrew(member, sharedBrewId);
    expect(shared).toMatchObject({ version: 2, recipeRev: 2, participants: [{ brew: { planVersion: 1 } }] });
    expect(shared?.brews[0]?.recipe.fermentables).toHaveLength(2);
  });
});

describe("a plan version", () => {
  it("is seen by the member who says so, and not unseen again", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId: id } = await callSharedBrew(organiser);
    await joinSharedBrew(member, joiningOf(id, await newKettle(member)));
    await changePlan(organiser, planChangeOf(id));
    const seen = async () => (await findSharedBrewPlan(member, id))?.participants.map((part) => part.seenVersion);
    expect(await seen()).toEqual([1]);
    await markPlanSeen(member, { id, version: 900 });
    expect(await seen()).toEqual([2]);
    await markPlanSeen(member, { id, version: 1 });
    expect(await seen()).toEqual([2]);
  });

  it.each([
    "UPDATE shared_brew_plan SET note = 'another'",
    "DELETE FROM shared_brew_plan",
    "TRUNCATE shared_brew_plan CASCADE",
  ])("is refused by the database to its owner: %s", async (sql) => {
    const { organiser } = await newClub();
    const { sharedBrewId } = await callSharedBrew(organiser);
    const owner = await connectAs("owner", organiser);
    await expect(owner.query(sql)).rejects.toThrow("is append-only");
    await owner.end();
    expect(await listPlanVersions(organiser, sharedBrewId)).toMatchObject([{ note: "" }]);
  });

  it.each([
    ["a window that ends before it begins", "window_to", "'2027-03-01'", "window_in_order"],
    ["half a window", "window_to", "NULL", "window_whole"],
    ["a rule that is missing", "rules", `'{"volume": true}'`, "rules_held"],
    ["a rule of another kind", "rules", `rules || '{"water": "holy"}'`, "rules_held"],
    ["a state unheard of", "state", "'merry'", "state_check"],
  ])("is not taken by the database with %s", async (_, column, value, constraint) => {
    const { organiser } = await newClub();
    await callSharedBrew(organiser);
    const client = await connectAs("gyle_app", organiser);
    const columns = ["recipe_id", "recipe_rev", "state", "window_from", "window_to", "rules", "made_by"];
    const values = columns.map((each) => (each === column ? value : each)).join(", ");
    const copy = `INSERT INTO shared_brew_plan (space_id, shared_brew_id, version, ${columns.join(", ")})
                  SELECT space_id, shared_brew_id, 2, ${values} FROM shared_brew_plan`;
    await expect(client.query(copy)).rejects.toThrow(constraint);
    await client.end();
  });
});
