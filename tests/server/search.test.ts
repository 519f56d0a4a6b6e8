import { beforeAll, describe, expect, it } from "vitest";
import { newRecipe } from "@/lib/model/recipe-content";
import { searchInput, type SearchResult } from "@/lib/model/search";
import { moveBrew } from "@/lib/server/brews/move";
import { planBrew } from "@/lib/server/brews/plan";
import { directory, inSpace } from "@/lib/server/db";
import { createEquipment } from "@/lib/server/equipment/writes";
import { createRecipe, saveRevision } from "@/lib/server/recipes/writes";
import { fillFigures } from "@/lib/server/search/figures";
import { search } from "@/lib/server/search/find";
import type { Member } from "@/lib/server/session";
import { brewOf, parsedEquipment } from "../support/brewing";
import { newClub } from "../support/club";
import { sampleContent, sampleRecipe } from "../support/sample-recipe";
import { connectAs } from "../support/sql-session";

interface Words {
  readonly title: string;
  readonly notes?: string;
  readonly style?: string;
  readonly hop?: string;
  readonly kg?: number;
}

function recipeOf({ title, notes = "", style, hop = "Bitter hop", kg = 4.5 }: Words) {
  const recipe = sampleRecipe();
  const [malt, ...malts] = recipe.fermentables;
  const [first, ...hops] = recipe.hops;
  const changed = { ...recipe, fermentables: [{ ...malt, kg }, ...malts], hops: [{ ...first, name: hop }, ...hops] };
  const content = { ...sampleContent(), recipe: changed, notes, style: style ?? null };
  return newRecipe.parse({ title, content, message: "" });
}

const find = (member: Member, asked: Record<string, string>): Promise<SearchResult> =>
  search(member, searchInput.parse(asked));
const titles = ({ hits }: SearchResult) => hits.map((hit) => hit.title.map((part) => part.text).join(""));

let organiser: Member;
let member: Member;
let stranger: Member;

beforeAll(async () => {
  ({ organiser, member } = await newClub("member"));
  ({ organiser: stranger } = await newClub());
  await createRecipe(organiser, recipeOf({ title: "Millrace Pale Ale", style: "18B", notes: "Dry and clean." }));
  await createRecipe(organiser, recipeOf({ title: "Kellerbier für März", hop: "Hallertauer Perle" }));
  await createRecipe(
    member,
    recipeOf({ title: "Harvest ales", notes: "Brewed with the crystal malts of last year", kg: 7 }),
  );
  await createRecipe(member, recipeOf({ title: "Table beer", kg: 2 }));
  await createRecipe(stranger, recipeOf({ title: "Millrace of strangers" }));
});

describe("words", () => {
  it("find titles, names of what goes in and notes, the title before the rest", async () => {
    expect(titles(await find(organiser, { q: "millrace" }))).toEqual(["Millrace Pale Ale"]);
    expect(titles(await find(organiser, { q: "perle" }))).toEqual(["Kellerbier für März"]);
    expect(titles(await find(organiser, { q: "last year" }))).toEqual(["Harvest ales"]);
    // In one title, and in the grist of the others.
    expect(titles(await find(organiser, { q: "pale" }))[0]).toBe("Millrace Pale Ale");
  });

  it("find other forms of an English word, letters without their accents, and beginnings", async () => {
    expect(titles(await find(organiser, { q: "ale" }))).toEqual(
      expect.arrayContaining(["Harvest ales", "Millrace Pale Ale"]),
    );
    expect(titles(await find(organiser, { q: "marz" }))).toEqual(["Kellerbier für März"]);
    expect(titles(await find(organiser, { q: "kell" }))).toEqual(["Kellerbier für März"]);
  });

  it("in quotation marks stand together, and after a minus are not wanted", async () => {
    expect(titles(await find(organiser, { q: '"pale ale"' }))).toEqual(["Millrace Pale Ale"]);
    expect(titles(await find(organiser, { q: "ale -millrace" }))).not.toContain("Millrace Pale Ale");
    expect(titles(await find(organiser, { q: "ale -millrace" }))).toContain("Harvest ales");
  });

  it("mistyped find what was probably meant, and the answer says so", async () => {
    for (const mistyped of ["milrace", "Milllrace", "millrase"]) {
      const result = await find(organiser, { q: mistyped });
      expect(titles(result), mistyped).toEqual(["Millrace Pale Ale"]);
      expect(result.corrected).toBe("millrace");
    }
    expect((await find(organiser, { q: "millrace" })).corrected).toBeNull();
    expect(await find(organiser, { q: "zzzzzz" })).toMatchObject({ hits: [], matches: 0, corrected: null });
  });

  it("are marked where they stand, whatever else stands there", async () => {
    const text = '<script>alert("x")</script> & <mark>barrel</mark> \ue000';
    await createRecipe(organiser, recipeOf({ title: "Odd barrel", notes: text }));
    const [hit] = (await find(organiser, { q: "barrel" })).hits;
    expect(hit?.title).toEqual([
      { text: "Odd ", isMatch: false },
      { text: "barrel", isMatch: true },
    ]);
    expect(hit?.excerpts.flat().filter((part) => part.isMatch)).toContainEqual({ text: "barrel", isMatch: true });
  });

  it.each(["'", "a & | !", "((", ":*", "\\", "%", "a:*b", "--", "\u0001", "x".repeat(200)])(
    "that mean something to the database are only words: %j",
    async (q) => {
      const parsed = searchInput.safeParse({ q });
      if (parsed.success) expect(await search(organiser, parsed.data)).toHaveProperty("hits");
      else expect(parsed.error.issues[0]?.message).toMatch(/^Search/);
    },
  );
});

describe("filters", () => {
  it("keep what is as strong, bitter and dark as asked for", async () => {
    const all = await find(organiser, { kind: "recipe" });
    for (const { originalPlato, bitternessIbu, colourEbc, alcoholVol } of all.hits) {
      for (const figure of [originalPlato, bitternessIbu, colourEbc, alcoholVol]) expect(figure).toBeGreaterThan(0);
    }
    const strengths = all.hits.map((hit) => hit.originalPlato ?? NaN);
    const between = String((Math.min(...strengths) + Math.max(...strengths)) / 2);
    const stronger = (await find(organiser, { kind: "recipe", pFrom: between })).hits;
    const weaker = (await find(organiser, { kind: "recipe", pTo: between })).hits;
    expect(stronger.length + weaker.length).toBe(all.hits.length);
    expect(stronger.every((hit) => (hit.originalPlato ?? 0) >= Number(between))).toBe(true);
    expect(titles(await find(organiser, { kind: "recipe", pTo: between }))).toContain("Table beer");
    expect(titles(await find(organiser, { volFrom: "29" }))).toEqual([]);
  });

  it("read a bound in the unit that its name says", () => {
    // 1.040 and 10 °P are the same wort to three digits; 1.9685 EBC are 1 SRM.
    const inSg = searchInput.parse({ sgFrom: "1.040", srmFrom: "1" });
    expect(inSg.sgFrom).toBeCloseTo(9.99, 1);
    expect(inSg.srmFrom).toBeCloseTo(1.97, 2);
  });

  it("say which bound is not one", () => {
    const parsed = searchInput.safeParse({ ibuFrom: "1200", sgTo: "high", since: "yesterday", page: "0" });
    expect(parsed.error?.issues.map((issue) => issue.message)).toEqual([
      "Original gravity to “high” is not a number; it takes 0.96 to 1.2 SG",
      "Bitterness from 1200 IBU is outside 0 to 1000 IBU",
      "Changed since is not a day",
      "Page 0 is outside 1 to 25",
    ]);
  });

  it("keep one kind, one style, one author, one time", async () => {
    expect(titles(await find(organiser, { style: "18B" }))).toEqual(["Millrace Pale Ale"]);
    const own = await find(organiser, { author: member.userId });
    expect(titles(own).sort()).toEqual(["Harvest ales", "Table beer"]);
    expect(own.hits[0]?.authorName).toBe("Some member");
    expect(titles(await find(organiser, { until: "2020-01-01" }))).toEqual([]);
    const today = new Date().toISOString().slice(0, 10);
    expect((await find(organiser, { since: today, until: today })).matches).toBeGreaterThan(3);
  });

  it("tell what has been brewed from what has only been planned", async () => {
    const club = await newClub();
    const { id: recipeId } = await createRecipe(club.organiser, recipeOf({ title: "Brewed ale" }));
    await createRecipe(club.organiser, recipeOf({ title: "Paper ale" }));
    const { id: equipmentId } = await createEquipment(club.organiser, parsedEquipment());
    const { id } = await planBrew(club.organiser, brewOf({ recipeId, equipmentId, sharedBrewId: null }));
    expect(titles(await find(club.organiser, { kind: "recipe", brewed: "yes" }))).toEqual([]);
    expect(await find(club.organiser, { q: "brewed", kind: "brew" })).toMatchObject({ hits: [{ id, brewed: false }] });
    await moveBrew(club.organiser, { id, state: "on the kettle", lockVersion: 1 });
    expect(titles(await find(club.organiser, { kind: "recipe", brewed: "yes" }))).toEqual(["Brewed ale"]);
    expect(titles(await find(club.organiser, { kind: "recipe", brewed: "no" }))).toEqual(["Paper ale"]);
  });
});

describe("what is found", () => {
  it("is the newest text of a recipe, and nothing of the one before", async () => {
    const club = await newClub();
    const { id } = await createRecipe(club.organiser, recipeOf({ title: "Heather ale" }));
    const before = (await find(club.organiser, { q: "heather" })).hits[0]?.originalPlato;
    await saveRevision(club.organiser, { id, baseRev: 1, ...recipeOf({ title: "Juniper ale", kg: 6 }) });
    expect(titles(await find(club.organiser, { q: "heather" }))).toEqual([]);
    const [after] = (await find(club.organiser, { q: "juniper" })).hits;
    expect(after?.originalPlato).toBeGreaterThan(before ?? NaN);
  });

  it("never stands in another club, by words, by filters or by a mistyped word", async () => {
    expect(titles(await find(stranger, { q: "kellerbier" }))).toEqual([]);
    expect(titles(await find(stranger, {}))).toEqual(["Millrace of strangers"]);
    expect(await find(stranger, { q: "kelerbier" })).toMatchObject({ hits: [], corrected: null });
    expect(titles(await find(stranger, { where: "everywhere", q: "millrace" }))).toEqual(["Millrace of strangers"]);
  });

  it("comes from every space of the reader where that is asked for, and says from which", async () => {
    await directory.membership.create({ data: { spaceId: stranger.spaceId, userId: member.userId, role: "guest" } });
    const result = await find(member, { where: "everywhere", q: "millrace" });
    expect(titles(result).sort()).toEqual(["Millrace Pale Ale", "Millrace of strangers"]);
    expect(new Set(result.hits.map((hit) => hit.spaceSlug))).toEqual(new Set([member.spaceSlug, stranger.spaceSlug]));
    expect(titles(await find(member, { q: "millrace" }))).toEqual(["Millrace Pale Ale"]);
  });

  it("comes in pages that together are everything, once", async () => {
    const club = await newClub();
    for (let i = 0; i < 23; i++) await createRecipe(club.organiser, recipeOf({ title: `Ale number ${i}` }));
    const first = await find(club.organiser, { q: "number" });
    const second = await find(club.organiser, { q: "number", page: "2" });
    expect([first.matches, first.hits.length, second.hits.length]).toEqual([23, 20, 3]);
    expect(new Set([...titles(first), ...titles(second)]).size).toBe(23);
  });

  it("is given figures later where a recipe came without, or with those of an older calculation", async () => {
    const club = await newClub();
    await createRecipe(club.organiser, recipeOf({ title: "Old ale" }));
    const { spaceId, userId } = club.organiser;
    await inSpace(spaceId, userId, (tx) =>
      tx.searchDocument.updateMany({ where: { spaceId }, data: { calcVersion: "0", originalPlato: null } }),
    );
    expect(titles(await find(club.organiser, { pFrom: "1" }))).toEqual([]);
    expect(await fillFigures()).toBeGreaterThanOrEqual(1);
    expect(titles(await find(club.organiser, { pFrom: "1" }))).toEqual(["Old ale"]);
    expect(await fillFigures()).toBe(0);
  });
});

describe("the function that looks past the policy", () => {
  it("is nobody's to act as, and gives nothing without a space", async () => {
    const owner = await connectAs("owner");
    await expect(owner.query("SET ROLE gyle_finder")).rejects.toThrow("permission denied");
    const app = await connectAs("gyle_app");
    const { rows } = await app.query("SELECT * FROM find_documents(NULL, '{}', 100, 100, 0)");
    expect(rows).toEqual([]);
    await expect(app.query("SET ROLE gyle_finder")).rejects.toThrow("permission denied");
    await Promise.all([owner.end(), app.end()]);
  });
});
