import { describe, expect, it } from "vitest";
import { equipmentInput } from "@/lib/model/equipment";
import type { KettleToAdapt } from "@/lib/model/kettle-entry";
import { chooseWay, wayChange, type WayChange } from "@/lib/server/adaptations/choose";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { createEquipment, saveEquipment } from "@/lib/server/equipment/writes";
import { listKettleEntries } from "@/lib/server/kettles/entries";
import { readKettles } from "@/lib/server/kettles/figures";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { parsedEquipment, parsedRecipe } from "../support/brewing";
import { join, newClub } from "../support/club";
import { smallKettle } from "../support/kettle-table";

/** A recipe, and a kettle of `brewer` whose basket is too small for it. */
async function misfit(organiser: Member, brewer: Member): Promise<{ recipeId: string; equipmentId: string }> {
  const { id: recipeId } = await createRecipe(organiser, parsedRecipe());
  const { id: equipmentId } = await createEquipment(brewer, { equipment: smallKettle });
  return { recipeId, equipmentId };
}

const change = (ids: { recipeId: string; equipmentId: string }, more: Partial<Record<keyof WayChange, unknown>> = {}) =>
  wayChange.parse({ ...ids, rev: 1, lockVersion: 0, volume: "usual", way: "less volume", ...more });

async function kettlesOf(member: Member, recipeId: string): Promise<KettleToAdapt[]> {
  const kettles: KettleToAdapt[] = [];
  for await (const batch of readKettles(member, await listKettleEntries(member, { recipeId, rev: 1 }))) {
    kettles.push(...batch);
  }
  return kettles;
}

describe("the rows of the table of all kettles", () => {
  it("are every kettle of the club, and every member who may have one and described none", async () => {
    const { organiser, member, judge, guest } = await newClub("member", "judge", "guest");
    const { recipeId, equipmentId } = await misfit(organiser, member);
    const { id: second } = await createEquipment(member, parsedEquipment());
    const rows = await listKettleEntries(judge, { recipeId, rev: 1 });
    const kettles = rows.filter(({ kettleName }) => kettleName !== null);
    expect(new Set(kettles.map(({ key }) => key))).toEqual(new Set([equipmentId, second]));
    expect(kettles.every(({ ownerName, mayChoose }) => ownerName === "Some member" && !mayChoose)).toBe(true);
    expect(rows.filter(({ kettleName }) => kettleName === null)).toEqual([
      expect.objectContaining({ key: organiser.userId, ownerName: "Olga Organiser", kept: null, mayChoose: false }),
    ]);
    expect(rows.some(({ key }) => key === judge.userId || key === guest.userId)).toBe(false);
  });

  it("say for whose kettle the reader may choose", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const { recipeId, equipmentId } = await misfit(organiser, member);
    const mayChoose = async (reader: Member): Promise<boolean | undefined> =>
      (await listKettleEntries(reader, { recipeId, rev: 1 })).find(({ key }) => key === equipmentId)?.mayChoose;
    expect(await mayChoose(member)).toBe(true);
    expect(await mayChoose(organiser)).toBe(true);
    expect(await mayChoose(other)).toBe(false);
  });

  it("come with the newest figures of each kettle, in their order, and none of another club", async () => {
    const { organiser, member } = await newClub("member");
    const { organiser: stranger } = await newClub();
    await createEquipment(stranger, parsedEquipment());
    const { recipeId, equipmentId } = await misfit(organiser, member);
    const { id: second } = await createEquipment(member, parsedEquipment());
    const equipment = equipmentInput.parse({ ...smallKettle, name: "Renamed" });
    await saveEquipment(member, { id: equipmentId, baseRev: 1, equipment });
    const order = (await listKettleEntries(member, { recipeId, rev: 1 }))
      .filter(({ kettleName }) => kettleName !== null)
      .map(({ key }) => key);
    const kettles = await kettlesOf(member, recipeId);
    expect(kettles.map(({ id }) => id)).toEqual(order);
    expect(new Set(order)).toEqual(new Set([equipmentId, second]));
    expect(kettles.find(({ id }) => id === equipmentId)?.equipment).toEqual(equipment);
    expect(await kettlesOf(stranger, recipeId)).toHaveLength(1);
  });
});

describe("choosing a way out", { timeout: 60_000 }, () => {
  it("is remembered for everybody, followed by the table, and taken back", async () => {
    const { organiser, member, guest } = await newClub("member", "guest");
    const ids = await misfit(organiser, member);
    const kept = { lockVersion: 1, choice: { volume: "usual", way: "less volume", lots: {} } };
    expect(await chooseWay(member, change(ids))).toMatchObject({ ok: true, kept });
    const row = (await listKettleEntries(guest, { ...ids, rev: 1 })).find(({ key }) => key === ids.equipmentId);
    expect(row?.kept).toEqual({ ...kept, changedByName: "Some member" });
    expect(await chooseWay(organiser, change(ids, { lockVersion: 1, way: "" }))).toMatchObject({
      ok: true,
      kept: { lockVersion: 2, choice: { way: null }, changedByName: "Olga Organiser" },
    });
  });

  it("is for the kettle's owner and organisers only", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const ids = await misfit(organiser, member);
    await expect(chooseWay(other, change(ids))).rejects.toThrow("Only the owner of this kettle or an organiser");
    expect((await listAdaptations(member, { ...ids, rev: 1 })).size).toBe(0);
    const { organiser: stranger } = await newClub();
    await expect(chooseWay(stranger, change(ids))).rejects.toThrow("There is no such recipe or kettle here.");
  });

  it("tells the second of two who choose at once what the first one chose", async () => {
    const { organiser, member } = await newClub("member");
    const ids = await misfit(organiser, member);
    await chooseWay(member, change(ids));
    expect(await chooseWay(organiser, change(ids, { way: "" }))).toMatchObject({
      ok: false,
      reason: "stale",
      kept: { lockVersion: 1, choice: { way: "less volume" }, changedByName: "Some member" },
    });
  });

  it("refuses a way that this kettle does not have, and keeps nothing", async () => {
    const { organiser, member } = await newClub("member");
    const ids = await misfit(organiser, member);
    for (const way of ["more volume", "no such way"]) {
      await expect(chooseWay(member, change(ids, { way }))).rejects.toThrow("This kettle has no such way out any more");
    }
    expect((await listAdaptations(member, { ...ids, rev: 1 })).size).toBe(0);
  });
});
