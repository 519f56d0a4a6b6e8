import { describe, expect, it } from "vitest";
import { dropBrew } from "@/lib/server/brews/drop";
import { moveBrew } from "@/lib/server/brews/move";
import { planBrew } from "@/lib/server/brews/plan";
import { findBrew, listBrews } from "@/lib/server/brews/reads";
import { listRegister } from "@/lib/server/brews/register";
import { inSpace } from "@/lib/server/db";
import { findLot, listMovements } from "@/lib/server/lots/reads";
import { createLot } from "@/lib/server/lots/writes";
import { recordReading } from "@/lib/server/readings/writes";
import { findSharedBrew } from "@/lib/server/shared-brews/reads";
import { readingInput } from "@/lib/model/reading-input";
import { brewOf, newBrewing } from "../support/brewing";
import { join, newClub } from "../support/club";
import { maltLot } from "../support/lots";
import { sampleReading } from "../support/sample-reading";

const WHY = "The burner is broken";

describe("a planned brew that is dropped", () => {
  it("gives its lots back with a movement, and counts in no list and no comparison", async () => {
    const { organiser, member } = await newClub("member");
    const brewing = await newBrewing(organiser, member);
    const { id: malt } = await createLot(member, maltLot());
    const planned = { ...brewOf({ ...brewing, sharedBrewId: null }), lots: { "fermentables.0": malt } };
    const { id } = await planBrew(member, planned);
    expect((await findLot(member, malt))?.onHand).toBeLessThan(25);
    await dropBrew(member, { id, lockVersion: 1, why: WHY });

    expect((await findLot(member, malt))?.onHand).toBe(25);
    expect((await listMovements(member, malt)).map(({ kind }) => kind)).toEqual(["returned", "used", "counted"]);
    expect(await findBrew(organiser, id)).toMatchObject({ dropped: { why: WHY }, mayWrite: false, state: "planned" });
    expect((await listBrews(member)).map((each) => each.id)).toEqual([brewing.brewId]);
    expect((await listRegister(member)).map((each) => each.id)).toEqual([brewing.brewId]);
  });

  it("leaves the shared brew, and its kettle is free for another sheet", async () => {
    const { organiser, member } = await newClub("member");
    const brewing = await newBrewing(organiser, member);
    await expect(planBrew(member, brewOf(brewing))).rejects.toThrow(
      "This kettle has a sheet in this shared brew already.",
    );
    await dropBrew(member, { id: brewing.brewId, lockVersion: 1, why: "" });
    expect((await findSharedBrew(member, brewing.sharedBrewId))?.brews).toEqual([]);
    const { id } = await planBrew(member, brewOf(brewing));
    expect((await findSharedBrew(member, brewing.sharedBrewId))?.brews.map((each) => each.id)).toEqual([id]);
  });

  it("asks for a reason where readings were written, and keeps them", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId: id } = await newBrewing(organiser, member);
    await recordReading(member, readingInput.parse(sampleReading(id)));
    await expect(dropBrew(member, { id, lockVersion: 1, why: "" })).rejects.toThrow(
      "Reason is empty: this brew has a reading, so say why it is dropped.",
    );
    expect(await findBrew(member, id)).toMatchObject({ dropped: null });
    await dropBrew(member, { id, lockVersion: 1, why: WHY });
    expect((await findBrew(member, id))?.readings).toHaveLength(1);
  });

  it("is dropped once, by who may write it, and never once it is on the kettle", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const { brewId: id } = await newBrewing(organiser, member);
    const drop = { id, lockVersion: 1, why: WHY };
    await expect(dropBrew(other, drop)).rejects.toThrow("Only who brews this, their helpers and organisers drop it.");
    await expect(dropBrew(member, { ...drop, lockVersion: 9 })).rejects.toThrow("Somebody changed this brew");
    await moveBrew(member, { id, state: "on the kettle", lockVersion: 1 });
    await expect(dropBrew(member, { ...drop, lockVersion: 2 })).rejects.toThrow("The brew is on the kettle");
    await moveBrew(member, { id, state: "planned", lockVersion: 2 });
    const answers = await Promise.allSettled([1, 2].map(() => dropBrew(member, { ...drop, lockVersion: 3 })));
    expect(answers.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    await expect(moveBrew(member, { id, state: "on the kettle", lockVersion: 4 })).rejects.toThrow(
      "This brew was dropped",
    );
  });

  it("stays dropped in the database, whoever forgets to look", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId: id } = await newBrewing(organiser, member);
    await dropBrew(member, { id, lockVersion: 1, why: "" });
    const { spaceId, userId } = member;
    const revive = inSpace(spaceId, userId, (tx) =>
      tx.brew.updateMany({ where: { spaceId, id }, data: { droppedAt: null, droppedBy: null, droppedWhy: null } }),
    );
    await expect(revive).rejects.toThrow("this brew was dropped");
  });
});
