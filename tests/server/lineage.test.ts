import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { MOST_CREDITS, newCopy, withCredit } from "@/lib/model/lineage";
import { directory } from "@/lib/server/db";
import { copyRevision } from "@/lib/server/recipes/copy";
import { findFamily } from "@/lib/server/recipes/family";
import { findOrigin } from "@/lib/server/recipes/origin";
import { listRecipes } from "@/lib/server/recipes/list";
import { findRecipe } from "@/lib/server/recipes/reads";
import { createRecipe, saveRevision } from "@/lib/server/recipes/writes";
import { proveMember, type Member, type Viewer } from "@/lib/server/session";
import { parsedRecipe } from "../support/brewing";
import { newClub } from "../support/club";

const copyOf = (recipeId: string, title = "A copy", rev = 1) =>
  newCopy.parse({ id: randomUUID(), recipeId, rev, title });

/** Somebody as a member of one more club. */
async function alsoIn(viewer: Viewer, club: Member, role: "member" | "judge" = "member"): Promise<Member> {
  await directory.membership.create({ data: { spaceId: club.spaceId, userId: viewer.userId, role } });
  const member = await proveMember(viewer, club.spaceSlug);
  if (member === null) throw new Error("the test's own set-up failed");
  return member;
}

async function benchOf(viewer: Viewer): Promise<Member> {
  const { slug } = await directory.space.findFirstOrThrow({ where: { ownerUserId: viewer.userId, kind: "person" } });
  const bench = await proveMember(viewer, slug);
  if (bench === null) throw new Error("the test's own set-up failed");
  return bench;
}

describe("a copy of a recipe", () => {
  it("has the same text, and keeps the revision that it was made of and whose it was", async () => {
    const { organiser, member } = await newClub("member");
    const { id } = await createRecipe(organiser, parsedRecipe("Old ale"));
    const bench = await benchOf(member);
    const { id: copied } = await copyRevision(member, bench, copyOf(id, "My old ale"));

    const copy = await findRecipe(bench, copied);
    expect(copy).toMatchObject({ title: "My old ale", rev: 1, authorName: "Some member" });
    expect(copy?.content).toEqual((await findRecipe(organiser, id))?.content);
    expect(await findOrigin(bench, copied)).toEqual({
      credits: [{ title: "Old ale", author: "Olga Organiser" }],
      link: { spaceSlug: organiser.spaceSlug, spaceName: "Test club", recipeId: id },
      rev: 1,
    });
    expect(await findOrigin(organiser, id)).toBeNull();
  });

  it("carries the credit on to further copies, and shows no more of an original than a reader may see", async () => {
    const { organiser, member } = await newClub("member");
    const { organiser: elsewhere } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("Old ale"));
    const { id: first } = await copyRevision(member, await benchOf(member), copyOf(id, "My old ale"));
    const there = await alsoIn(member, elsewhere);
    const { id: second } = await copyRevision(await benchOf(member), there, copyOf(first, "Our old ale"));

    // The other club belongs neither to the first club nor to the bench in between.
    expect(await findOrigin(elsewhere, second)).toEqual({
      credits: [
        { title: "Old ale", author: "Olga Organiser" },
        { title: "My old ale", author: "Some member" },
      ],
      link: null,
      rev: null,
    });
    const seen = JSON.stringify([await findOrigin(elsewhere, second), await findFamily(elsewhere, second)]);
    for (const secret of [id, first, organiser.spaceId, organiser.spaceSlug]) expect(seen).not.toContain(secret);
  });

  it("is made by whoever may read the original and write where it goes", async () => {
    const { organiser, judge } = await newClub("judge");
    const { organiser: elsewhere } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    // A judge reads here, and writes on an own bench.
    await expect(copyRevision(judge, await benchOf(judge), copyOf(id))).resolves.toHaveProperty("id");
    await expect(copyRevision(judge, judge, copyOf(id))).rejects.toMatchObject({ code: "FORBIDDEN" });
    const judgeThere = await alsoIn(organiser, elsewhere, "judge");
    await expect(copyRevision(organiser, judgeThere, copyOf(id))).rejects.toMatchObject({ code: "FORBIDDEN" });
    expect(await listRecipes(elsewhere)).toEqual([]);
  });

  it("of another club's recipe, or of a revision that there is not, is answered as one of nothing", async () => {
    const { organiser } = await newClub();
    const { organiser: stranger } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    for (const wanted of [copyOf(id), copyOf(randomUUID())]) {
      await expect(copyRevision(stranger, stranger, wanted)).rejects.toMatchObject({ code: "NOT_FOUND" });
    }
    await expect(copyRevision(organiser, organiser, copyOf(id, "Late", 2))).rejects.toMatchObject({
      code: "NOT_FOUND",
    });
    expect(await listRecipes(stranger)).toEqual([]);
  });

  it("is one, however often and however fast its form is sent", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const order = copyOf(id);
    const made = await Promise.all(Array.from({ length: 8 }, () => copyRevision(organiser, organiser, order)));
    expect(new Set(made.map((copy) => copy.id))).toEqual(new Set([order.id]));
    expect(await listRecipes(organiser)).toHaveLength(2);
  });

  it("never takes the place of a recipe that has its id", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("First"));
    const { id: other } = await createRecipe(organiser, parsedRecipe("Second"));
    await expect(copyRevision(organiser, organiser, { ...copyOf(id), id: other })).rejects.toThrow();
    expect(await findRecipe(organiser, other)).toMatchObject({ title: "Second" });
  });

  it("stays what it is when the original goes on", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("Old ale"));
    const { id: copied } = await copyRevision(organiser, organiser, copyOf(id));
    const { content } = parsedRecipe();
    await saveRevision(organiser, {
      id,
      baseRev: 1,
      title: "Newer ale",
      message: "",
      content: { ...content, notes: "more" },
    });
    expect((await findRecipe(organiser, copied))?.content.notes).toBe("");
    expect(await findOrigin(organiser, copied)).toMatchObject({ credits: [{ title: "Old ale" }], rev: 1 });
  });
});

describe("credits", () => {
  it("of a chain longer than is kept lose their middle, never the first or the last", () => {
    const chain = Array.from({ length: 60 }, (_, i) => ({ title: `Ale ${i}`, author: "Somebody" }));
    const kept = chain.reduce<readonly (typeof chain)[number][]>(withCredit, []);
    expect(kept).toHaveLength(MOST_CREDITS);
    expect(kept[0]?.title).toBe("Ale 0");
    expect(kept.at(-1)?.title).toBe("Ale 59");
  });
});

describe("the family of a recipe", () => {
  it("is the same tree from every recipe in it", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("Root"));
    const { id: one } = await copyRevision(organiser, organiser, copyOf(id, "One"));
    const { id: two } = await copyRevision(organiser, organiser, copyOf(id, "Two"));
    const { id: three } = await copyRevision(organiser, organiser, copyOf(one, "Three"));
    const family = await findFamily(organiser, three);
    expect(family).toMatchObject({
      size: 4,
      hidden: 0,
      root: {
        shown: { title: "Root" },
        copies: [
          { shown: { title: "One" }, ofRev: 1, copies: [{ shown: { title: "Three" } }] },
          { shown: { title: "Two" }, copies: [] },
        ],
      },
    });
    for (const each of [id, one, two]) expect(await findFamily(organiser, each)).toEqual(family);
  });

  it("of a recipe without copies is the recipe", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("Alone"));
    expect(await findFamily(organiser, id)).toMatchObject({
      size: 1,
      hidden: 0,
      root: { shown: { title: "Alone" }, copies: [], hiddenCopies: 0 },
    });
  });

  it("counts what a reader may not see, and names nothing of it", async () => {
    const { organiser, member } = await newClub("member");
    const { organiser: elsewhere } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("Root"));
    const bench = await benchOf(member);
    const there = await alsoIn(member, elsewhere);
    const { id: mine } = await copyRevision(member, bench, copyOf(id, "Secret bench ale"));
    const { id: far } = await copyRevision(bench, there, copyOf(mine, "Far ale"));
    await copyRevision(there, there, copyOf(far, "Further ale"));

    const asRoot = await findFamily(organiser, id);
    expect(asRoot).toMatchObject({
      size: 4,
      hidden: 3,
      root: { shown: { title: "Root" }, copies: [], hiddenCopies: 3 },
    });
    const asFar = await findFamily(elsewhere, far);
    expect(asFar).toMatchObject({
      size: 4,
      hidden: 2,
      root: {
        shown: null,
        copies: [
          { shown: null, copies: [{ shown: { title: "Far ale" }, copies: [{ shown: { title: "Further ale" } }] }] },
        ],
      },
    });
    expect(JSON.stringify(asRoot)).not.toMatch(/Secret|Far/);
    expect(JSON.stringify(asFar)).not.toMatch(/Secret|Root/);
    expect(await findFamily(elsewhere, id)).toBeNull();
  });
});
