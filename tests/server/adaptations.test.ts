import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { adaptationChange, type AdaptationChange } from "@/lib/model/adaptation";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { saveAdaptation } from "@/lib/server/adaptations/writes";
import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { newBrewing, type Brewing } from "../support/brewing";
import { join, newClub } from "../support/club";

const changeOf = (
  { recipeId, equipmentId }: Brewing,
  lockVersion: number,
  choice: Partial<AdaptationChange["choice"]> = {},
): AdaptationChange =>
  adaptationChange.parse({
    recipeId,
    rev: 1,
    equipmentId,
    lockVersion,
    choice: { volume: "usual", way: "less volume", lots: {}, ...choice },
  });

async function newLot({ spaceId, userId }: Member): Promise<string> {
  const id = randomUUID();
  const lot = {
    kind: "hop",
    name: "Bitter hop",
    label: "Harvest 2026",
    figures: { alpha: 0.08 },
    onHand: 1,
    unit: "kg",
  };
  await inSpace(spaceId, userId, (tx) => tx.ingredientLot.create({ data: { spaceId, id, createdBy: userId, ...lot } }));
  return id;
}

describe("what a brewer chose for a kettle", () => {
  it("is kept, with who chose it, and changed by its version", async () => {
    const { organiser, member } = await newClub("member");
    const brewing = await newBrewing(organiser, member);
    const { recipeId, equipmentId } = brewing;
    expect(await saveAdaptation(member, changeOf(brewing, 0))).toEqual({ ok: true, lockVersion: 1 });
    const lots = { "hops.0": await newLot(member) };
    expect(await saveAdaptation(organiser, changeOf(brewing, 1, { way: null, lots }))).toEqual({
      ok: true,
      lockVersion: 2,
    });
    const kept = await listAdaptations(member, { recipeId, rev: 1 });
    expect(kept.get(equipmentId)).toMatchObject({
      lockVersion: 2,
      choice: { volume: "usual", way: null, lots },
      changedByName: "Olga Organiser",
    });
  });

  it("is not overwritten by somebody who saw an older choice, nor by a second first choice", async () => {
    const { organiser, member } = await newClub("member");
    const brewing = await newBrewing(organiser, member);
    const first = await Promise.all(
      [member, organiser, member, organiser].map((by) => saveAdaptation(by, changeOf(brewing, 0))),
    );
    expect(first.filter(({ ok }) => ok)).toHaveLength(1);
    await saveAdaptation(member, changeOf(brewing, 1, { volume: "written" }));
    expect(await saveAdaptation(organiser, changeOf(brewing, 1))).toEqual({ ok: false, reason: "stale" });
    const kept = await listAdaptations(member, { recipeId: brewing.recipeId, rev: 1 });
    expect(kept.get(brewing.equipmentId)?.choice.volume).toBe("written");
  });

  it("is the business of the kettle's owner and the organisers", async () => {
    const { organiser, member, judge } = await newClub("member", "judge");
    const brewing = await newBrewing(organiser, member);
    const other = await join(organiser, "member");
    for (const by of [other, judge]) {
      await expect(saveAdaptation(by, changeOf(brewing, 0))).rejects.toThrow(
        "Only the owner of this kettle or an organiser chooses for it.",
      );
    }
  });

  it("is not found for another club, nor are another club's lots", async () => {
    const { organiser, member } = await newClub("member");
    const brewing = await newBrewing(organiser, member);
    const { organiser: stranger } = await newClub();
    await expect(saveAdaptation(stranger, changeOf(brewing, 0))).rejects.toThrow("no such recipe or kettle");
    const lots = { "hops.0": await newLot(stranger) };
    await expect(saveAdaptation(member, changeOf(brewing, 0, { lots }))).rejects.toThrow("no such lot");
    expect((await listAdaptations(member, { recipeId: brewing.recipeId, rev: 1 })).size).toBe(0);
    expect((await listAdaptations(stranger, { recipeId: brewing.recipeId, rev: 1 })).size).toBe(0);
  });
});
