import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { comparedRowOf } from "@/lib/model/published-result";
import { readingInput } from "@/lib/model/reading-input";
import { findBrew } from "@/lib/server/brews/reads";
import { planBrew } from "@/lib/server/brews/plan";
import { directory, inSpace } from "@/lib/server/db";
import { publishResult, withdrawResult } from "@/lib/server/publications/publish-result";
import { findPublishedResult, listResults } from "@/lib/server/publications/result-reads";
import { isWithdrawn } from "@/lib/server/publications/withdrawn";
import { publishRecipe, withdrawRecipe } from "@/lib/server/publications/writes";
import { recordReading } from "@/lib/server/readings/writes";
import type { Member } from "@/lib/server/session";
import { brewOf, newBrewing } from "../support/brewing";
import { newClub } from "../support/club";
import { newKettle } from "../support/shared-brew";
import { sampleReading } from "../support/sample-reading";

const read = (brewer: Member, brewId: string, value: number) =>
  recordReading(brewer, readingInput.parse({ ...sampleReading(brewId), value, entered: String(value) }));

/** Two brewers of one shared brew, who measured 27.5 L and 26.0 L before the boil. */
async function brewedClub() {
  const club = await newClub("member", "judge");
  const { organiser, member } = club;
  const first = await newBrewing(organiser, member);
  const equipmentId = await newKettle(organiser);
  const { id: secondId } = await planBrew(organiser, brewOf({ ...first, equipmentId }));
  await read(member, first.brewId, 27.5);
  await read(organiser, secondId, 26);
  return { ...club, ...first, secondId };
}

const orderFor = ({ sharedBrewId }: { readonly sharedBrewId: string }) => ({ id: randomUUID(), sharedBrewId });

const measuredOf = async (address: string) =>
  (await findPublishedResult(address))?.columns
    .map((column) => comparedRowOf(column, "kettle.preBoil")?.measured)
    .sort();

describe("a published result", () => {
  it("has what each brewer planned and measured, and nobody's name, kettle or id", async () => {
    const club = await brewedClub();
    const { organiser, member } = club;
    const { address } = await publishResult(organiser, orderFor(club));
    expect(address).toMatch(/^spring-brew-[a-z0-9]{8}$/);
    const result = await findPublishedResult(address);
    expect(result).toMatchObject({ title: "Spring brew", recipeTitle: "Test ale", brewers: 2, kettles: 2 });
    expect(result?.columns.map(({ name }) => name)).toEqual(["Brewer A", "Brewer B"]);
    expect(await measuredOf(address)).toEqual([26, 27.5]);
    const planned = (await findBrew(member, club.brewId))?.predicted["kettle.preBoil"];
    const row = result?.columns.map((column) => comparedRowOf(column, "kettle.preBoil"))[0];
    expect(row).toMatchObject({
      planned: planned?.value,
      interval: { low80: planned?.low80, high80: planned?.high80 },
    });

    const seen = JSON.stringify(result);
    const people = ["Olga", "Some member", "@example.org", organiser.userId, member.userId];
    const records = [
      "Test kettle",
      organiser.spaceId,
      organiser.spaceSlug,
      club.brewId,
      club.recipeId,
      club.sharedBrewId,
    ];
    for (const secret of [...people, ...records, club.equipmentId]) expect(seen).not.toContain(secret);
  });

  it("stays as it was when more is read, and a later one is published beside it", async () => {
    const club = await brewedClub();
    const first = await publishResult(club.organiser, orderFor(club));
    const before = await findPublishedResult(first.address);
    await recordReading(
      club.member,
      readingInput.parse({ ...sampleReading(club.brewId), deviceSeq: 9, value: 24, entered: "24" }),
    );
    expect(await findPublishedResult(first.address)).toEqual(before);
    const second = await publishResult(club.organiser, orderFor(club));
    expect(second.address).not.toBe(first.address);
    expect(await findPublishedResult(first.address)).toEqual({ ...before, newerAddress: second.address });
    expect((await findPublishedResult(second.address))?.newerAddress).toBeNull();
  });

  it("links the revisions that are published too, for as long as they are", async () => {
    const club = await brewedClub();
    const { address } = await publishResult(club.organiser, orderFor(club));
    expect((await findPublishedResult(address))?.revisions).toEqual([{ rev: 1, address: null }]);
    const recipe = await publishRecipe(club.organiser, { recipeId: club.recipeId, rev: 1, named: false });
    expect((await findPublishedResult(address))?.revisions).toEqual([{ rev: 1, address: recipe.address }]);
    await withdrawRecipe(club.organiser, recipe.address);
    expect((await findPublishedResult(address))?.revisions).toEqual([{ rev: 1, address: null }]);
  });

  it("is one, however often the same form is sent", async () => {
    const club = await brewedClub();
    const order = orderFor(club);
    const made = await Promise.all([1, 2, 3].map(() => publishResult(club.organiser, order)));
    expect(new Set(made.map(({ address }) => address)).size).toBe(1);
    expect(await listResults(club.organiser, club.sharedBrewId)).toHaveLength(1);
    const noted = await directory.auditLog.count({ where: { target: made[0]?.address ?? "" } });
    expect(noted).toBe(1);
  });

  it("is decided by organisers, of their own club's brews", async () => {
    const club = await brewedClub();
    const { organiser: stranger } = await newClub();
    for (const reader of [club.member, club.judge]) {
      await expect(publishResult(reader, orderFor(club))).rejects.toMatchObject({ code: "FORBIDDEN" });
    }
    await expect(publishResult(stranger, orderFor(club))).rejects.toMatchObject({ code: "NOT_FOUND" });
    expect(await listResults(club.organiser, club.sharedBrewId)).toEqual([]);
  });

  it("needs two brewers who measured, because one alone is known", async () => {
    const { organiser, member } = await newClub("member");
    const one = await newBrewing(organiser, member);
    await read(member, one.brewId, 27.5);
    await planBrew(organiser, brewOf({ ...one, equipmentId: await newKettle(organiser) }));
    await expect(publishResult(organiser, orderFor(one))).rejects.toThrow(
      "A result needs figures measured by at least 2 brewers; here it is 1.",
    );
  });

  it("is refused every other change by the database, also from its own space", async () => {
    const club = await brewedClub();
    const { organiser } = club;
    const { address } = await publishResult(organiser, orderFor(club));
    const change = (data: object) =>
      inSpace(organiser.spaceId, organiser.userId, (tx) => tx.publicResult.updateMany({ where: { address }, data }));
    await expect(change({ title: "Better" })).rejects.toThrow("withdrawn or stays as it is");
    await expect(change({ withdrawnAt: new Date(), content: {}, title: "", publishedAt: new Date(0) })).rejects.toThrow(
      "withdrawn or stays as it is",
    );
    await expect(change({ withdrawnAt: new Date() })).rejects.toThrow("withdrawn_is_empty");
  });
});

describe("a withdrawn result", () => {
  it("is gone for everybody, also where it was kept, and does not come back", async () => {
    const club = await brewedClub();
    const { organiser } = club;
    const { address } = await publishResult(organiser, orderFor(club));
    expect(await isWithdrawn(address)).toBe(false);
    await withdrawResult(organiser, address);
    expect(await findPublishedResult(address)).toBeNull();
    expect(await isWithdrawn(address)).toBe(true);
    const nobody = randomUUID();
    const [row] = await inSpace(nobody, nobody, (tx) => tx.publicResult.findMany({ where: { address } }));
    expect(row).toMatchObject({ content: {}, title: "" });
    await expect(withdrawResult(organiser, address)).rejects.toMatchObject({ code: "NOT_FOUND" });
    const back = inSpace(organiser.spaceId, organiser.userId, (tx) =>
      tx.publicResult.updateMany({
        where: { address },
        data: { withdrawnAt: null, title: "Again", content: { a: 1 } },
      }),
    );
    await expect(back).rejects.toThrow("withdrawn or stays as it is");
    const noted = await directory.auditLog.findMany({ where: { target: address }, orderBy: { id: "asc" } });
    expect(noted.map(({ action }) => action)).toEqual(["publish", "withdraw"]);
  });

  it("is withdrawn by its own organisers only", async () => {
    const club = await brewedClub();
    const { organiser: stranger } = await newClub();
    const { address } = await publishResult(club.organiser, orderFor(club));
    await expect(withdrawResult(stranger, address)).rejects.toMatchObject({ code: "NOT_FOUND" });
    await expect(withdrawResult(club.member, address)).rejects.toMatchObject({ code: "FORBIDDEN" });
    expect(await findPublishedResult(address)).not.toBeNull();
  });
});

describe("a withdrawn address", () => {
  it("is told from one that never was, and from one that was published again", async () => {
    const club = await brewedClub();
    const order = { recipeId: club.recipeId, rev: 1, named: false };
    const { address } = await publishRecipe(club.organiser, order);
    expect(await isWithdrawn(address)).toBe(false);
    await withdrawRecipe(club.organiser, address);
    expect(await isWithdrawn(address)).toBe(true);
    await publishRecipe(club.organiser, order);
    expect(await isWithdrawn(address)).toBe(false);
    for (const never of ["nothing-was-here", "%", "'", ""]) expect(await isWithdrawn(never)).toBe(false);
  });
});
