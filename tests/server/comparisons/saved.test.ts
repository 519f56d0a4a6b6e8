import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { newComparison } from "@/lib/model/summary/saved-comparison";
import { questionOf } from "@/lib/model/summary/question";
import { findComparison, listComparisons } from "@/lib/server/comparisons/reads";
import { deleteComparison, renameComparison, saveComparison } from "@/lib/server/comparisons/writes";
import { inSpace } from "@/lib/server/db";
import { listSummaries } from "@/lib/server/summaries/reads";
import { tidyResponse } from "@/lib/server/summaries/tidy-response";
import { newBrewing } from "../../support/brewing";
import { gravityOf } from "../../support/cellar";
import { join, newClub } from "../../support/club";
import { storeEvents } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";

/** As the form sends it: what sets no limit is empty. */
const sent = (change: object = {}): object => {
  const question = Object.entries(questionOf({})).map(([name, value]): [string, string] => [name, value ?? ""]);
  return { id: randomUUID(), name: "Original extract", ...Object.fromEntries(question), ...change };
};
const comparisonOf = (change: object = {}) => newComparison.parse(sent(change));

describe("a saved comparison", () => {
  it("is kept as it was asked, for everybody of the club and nobody else", async () => {
    const { organiser, member } = await newClub("member");
    const { recipeId, sharedBrewId } = await newBrewing(organiser, member);
    const asked = { recipe: recipeId, sharedBrew: sharedBrewId, brewer: member.userId, group: "kettle" };
    const input = comparisonOf({ ...asked, state: "closed", from: "2026-03-01", to: "2026-03-31" });
    await saveComparison(member, input);
    const { id: _id, name: _name, ...question } = input;
    expect(await findComparison(organiser, input.id)).toMatchObject({ name: "Original extract", question });
    const outsider = (await newClub()).organiser;
    expect(await findComparison(outsider, input.id)).toBeNull();
    expect(await listComparisons(outsider)).toEqual([]);
    await expect(renameComparison(outsider, { id: input.id, lockVersion: 1, name: "x" })).rejects.toThrow("no such");
    await expect(saveComparison(outsider, comparisonOf({ recipe: recipeId }))).rejects.toThrow("no such recipe");
  });

  it("is kept once however often one page sends it", async () => {
    const { organiser } = await newClub();
    const input = comparisonOf();
    await Promise.all([1, 2, 3].map(() => saveComparison(organiser, input)));
    expect(await listComparisons(organiser)).toHaveLength(1);
  });

  it("is changed by its maker and organisers alone, and the second of two is told", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const { id } = await saveComparison(member, comparisonOf());
    const rename = (who: Member, name: string) => renameComparison(who, { id, lockVersion: 1, name });
    await expect(rename(other, "Mine")).rejects.toThrow("Only who keeps this comparison");
    await rename(member, "Ours");
    await expect(rename(organiser, "Theirs")).rejects.toThrow("Somebody changed this comparison");
    await deleteComparison(organiser, { id, lockVersion: 2 });
    expect(await findComparison(member, id)).toBeNull();
    const { spaceId, userId } = member;
    const row = await inSpace(spaceId, userId, (tx) => tx.savedComparison.findFirst({ where: { spaceId, id } }));
    expect(row).toMatchObject({ name: "Ours", deletedBy: organiser.userId });
  });

  it("is refused where a field is wrong, with what it takes", () => {
    const refused = (change: object) => newComparison.safeParse(sent(change)).error;
    expect(refused({ quantity: "mash.magic" })?.message).toContain("Quantity is one of: water.mash");
    expect(refused({ from: "2026-03-05", to: "2026-03-01" })?.message).toContain("The last day is before the first");
    expect(refused({ from: "yesterday" })?.message).toContain("a day is written 2026-03-14");
  });
});

describe("tidy data", () => {
  it("have a row for each reading that counts and for each quantity, as CSV that runs nothing and as JSON", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId } = await newBrewing(organiser, member);
    const events = [1, 2, 3].map((day) => gravityOf(brewId, day, 12 - day));
    const by = { actorId: member.userId, sentAt: null, clockOffsetMs: null };
    await storeEvents(
      member,
      events.map((event) => ({ event, ...by })),
    );
    const brews = (await listSummaries(member, {})).map((brew) => ({ ...brew, title: "=1+1" }));
    const text = (rows: "figures" | "readings", format: "csv" | "json") =>
      tidyResponse(member, brews, { rows, format }).text();
    const csv = (await text("readings", "csv")).trim().split("\r\n");
    expect(csv).toHaveLength(1 + events.length);
    expect(csv[1]).toContain(",'=1+1,");
    // The log keeps specific gravity, so the digits past the reading's own may differ.
    expect(csv.slice(1).map((line) => Number(line.split(",").at(-3)).toFixed(9))).toEqual(
      [11, 10, 9].map((plato) => plato.toFixed(9)),
    );
    const readings = JSON.parse(await text("readings", "json")) as readonly object[];
    expect(readings).toHaveLength(events.length);
    expect(readings[0]).toMatchObject({
      quantity: "fermenter.gravity",
      unit: "°P",
      value: expect.closeTo(11, 9) as number,
      sd: 0.1,
    });
    const figures = JSON.parse(await text("figures", "json")) as readonly { readonly quantity: string }[];
    expect(figures.map(({ quantity }) => quantity)).toEqual(brews[0]?.summary?.figures.map(({ quantity }) => quantity));
  });
});
