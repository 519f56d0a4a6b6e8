import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { displayNames, givenNames } from "@/lib/server/accounts/names";
import { exportClub } from "@/lib/server/club-file/export-club";
import { importClub, readClubFile } from "@/lib/server/club-file/import-club";
import { directory } from "@/lib/server/db";
import { listRecipes } from "@/lib/server/recipes/list";
import { findRecipe } from "@/lib/server/recipes/reads";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { listPeople } from "@/lib/server/spaces/reads";
import { parsedRecipe } from "../support/brewing";
import { newClub } from "../support/club";

async function fileOf(member: Member): Promise<string> {
  return [...(await exportClub(member, new Date()))].join("");
}

/** A club that was taken out of the file of another one, in which a member wrote a recipe. */
async function takenClub() {
  const { organiser: before, member: author } = await newClub("member");
  await createRecipe(author, parsedRecipe("Old ale"));
  const text = await fileOf(before);
  const { organiser } = await newClub();
  await importClub(organiser, { text, matches: {} });
  return { organiser, author, text };
}

describe("the name of an author", () => {
  it("is shown as it is while they belong to the club", async () => {
    const { organiser, member } = await newClub("member");
    expect((await displayNames(organiser, [member.userId]))(member.userId)).toBe("Some member");
  });

  it("is shown as a former member's once they have left, and credited without the mark", async () => {
    const { organiser, member } = await newClub("member");
    const { id } = await createRecipe(member, parsedRecipe("Old ale"));
    const { spaceId } = organiser;
    await directory.membership.update({
      where: { spaceId_userId: { spaceId, userId: member.userId } },
      data: { status: "left" },
    });
    expect((await findRecipe(organiser, id))?.authorName).toBe("Some member (former member)");
    expect((await givenNames(organiser, [member.userId]))(member.userId)).toBe("Some member");
  });

  it("is that of the file for somebody who is in no account here, and says so", async () => {
    const { organiser } = await takenClub();
    const [recipe] = await listRecipes(organiser);
    expect(recipe?.authorName).toBe("Some member (former member)");
    expect((await findRecipe(organiser, recipe?.id ?? ""))?.authorName).toBe("Some member (former member)");
  });

  it("is not doubled by another file, and not marked in it", async () => {
    const { organiser } = await takenClub();
    expect(readClubFile(await fileOf(organiser)).people.map(({ name }) => name)).toEqual(["Some member"]);
  });

  it("is not known to another club", async () => {
    const { organiser } = await takenClub();
    const id = readClubFile(await fileOf(organiser)).people[0]?.id ?? "";
    const stranger = (await newClub()).organiser;
    expect((await displayNames(stranger, [id]))(id)).toBe("a former member");
    expect((await displayNames(organiser, [randomUUID()]))(randomUUID())).toBe("a former member");
  });
});

describe("somebody out of the file of a club", () => {
  it("gets no account and no membership, and is not taken for who has the same name", async () => {
    const before = await directory.appUser.count();
    const { organiser, author } = await takenClub();
    // The two clubs of the test have three people of their own.
    expect(await directory.appUser.count()).toBe(before + 3);
    const [recipe] = await listRecipes(organiser);
    const people = readClubFile(await fileOf(organiser)).people.map(({ id }) => id);
    expect(people).not.toContain(author.userId);
    expect(await directory.appUser.count({ where: { id: { in: people } } })).toBe(0);
    expect((await listPeople(organiser)).map(({ userId }) => userId)).toEqual([organiser.userId]);
    expect(recipe?.authorName).not.toBe("Some member");
  });
});
