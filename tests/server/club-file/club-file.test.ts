import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import type { ClubFile } from "@/lib/model/club-file/club-file";
import { canonicalJson } from "@/lib/server/canonical-json";
import { exportClub, hashOfRows } from "@/lib/server/club-file/export-club";
import { importClub, readClubFile } from "@/lib/server/club-file/import-club";
import { directory, inSpace } from "@/lib/server/db";
import { listBrews } from "@/lib/server/brews/reads";
import { importRecipes } from "@/lib/server/exchange/import-recipes";
import { listRecipes } from "@/lib/server/recipes/list";
import { findRecipe } from "@/lib/server/recipes/reads";
import type { Member } from "@/lib/server/session";
import { seedDemoClub } from "../../../seed-demo/seed";
import { asMember } from "../../../seed-demo/club";
import { DEMO_CLUB, DEMO_PEOPLE } from "../../../seed-demo/people";
import { newClub } from "../../support/club";
import { beerJsonFile } from "../../support/exchange-files";

const NOW = new Date("2026-11-28T12:00:00Z");

async function textOf(member: Member): Promise<string> {
  return [...(await exportClub(member, NOW))].join("");
}

/** A file with its identifiers counted in the order in which they come, so that two files can be held against another. */
function withoutIdentifiers(text: string): unknown {
  const seen = new Map<string, string>();
  const counted = text.replaceAll(/[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g, (id) => {
    const known = seen.get(id) ?? `#${String(seen.size)}`;
    seen.set(id, known);
    return known;
  });
  const { parts, club, people, ...file } = JSON.parse(counted) as ClubFile;
  return {
    ...file,
    names: people.map(({ name }) => name).sort(),
    parts: parts
      .filter(({ table }) => table !== "former_member")
      .map(({ table, rows, count }) => ({ table, rows, count })),
  };
}

let demo: Member;
let text: string;

beforeAll(async () => {
  await seedDemoClub();
  const organiser = DEMO_PEOPLE.find(({ key }) => key === "organiser");
  if (organiser === undefined) throw new Error("the demo club has no organiser");
  demo = await asMember(organiser.email, DEMO_CLUB.slug, (member) => Promise.resolve(member));
  await importRecipes(demo, { bytes: beerJsonFile(), kettle: null, chosen: [0] });
  text = await textOf(demo);
}, 240_000);

describe("the file of a club", () => {
  it("has the demo club with every part as it was hashed", () => {
    const { parts, club } = readClubFile(text);
    expect(club.name).toBe(DEMO_CLUB.name);
    const count = (table: string) => parts.find((part) => part.table === table)?.count ?? 0;
    expect(count("brew_event")).toBeGreaterThan(50);
    for (const table of ["recipe", "recipe_revision", "recipe_leftover", "equipment", "brew", "shared_brew"]) {
      expect(count(table), table).toBeGreaterThan(0);
    }
  });

  it("has people by name only: no address, no secret, no tasting", async () => {
    for (const { email, name } of DEMO_PEOPLE) {
      expect(text).not.toContain(email);
      if (text.includes(name)) expect(text).toContain(`"name":${JSON.stringify(name)}`);
    }
    const secrets = await directory.appUser.findMany({ select: { passwordHash: true } });
    for (const { passwordHash } of secrets) expect(text).not.toContain(passwordHash ?? "never");
    for (const { table } of readClubFile(text).parts) expect(table).not.toMatch(/^tasting|score_sheet/);
  });

  it("is for organisers", async () => {
    const { member } = await newClub("member");
    await expect(textOf(member)).rejects.toThrow("Only an organiser does this.");
    await expect(importClub(member, { text, matches: {} })).rejects.toThrow("Only an organiser does this.");
  });
});

describe("taking a club out of its file", () => {
  it("makes the same club again, but for the identifiers", async () => {
    const { organiser } = await newClub();
    await importClub(organiser, { text, matches: {} });
    expect(withoutIdentifiers(await textOf(organiser))).toEqual(withoutIdentifiers(text));
    const [recipe] = await listRecipes(organiser);
    expect((await findRecipe(organiser, recipe?.id ?? ""))?.content).toBeDefined();
    expect((await listBrews(organiser)).length).toBe((await listBrews(demo)).length);
  }, 120_000);

  it("has the figures that recipes are searched by, without anything else being run", async () => {
    const { organiser } = await newClub();
    await importClub(organiser, { text, matches: {} });
    const figures = async ({ spaceId, userId }: Member) => {
      const where = { spaceId, kind: "recipe" };
      const rows = await inSpace(spaceId, userId, (tx) =>
        tx.searchDocument.findMany({ where, select: { originalPlato: true, bitternessIbu: true, calcVersion: true } }),
      );
      return rows.map((row) => JSON.stringify(row)).sort();
    };
    expect(await figures(organiser)).toEqual(await figures(demo));
    expect((await figures(organiser)).join()).toMatch(/"originalPlato":\d/);
  }, 120_000);

  it("gives what somebody wrote to who they are matched with, and the rest to former members", async () => {
    const { organiser } = await newClub();
    const { people } = readClubFile(text);
    const [first] = people;
    if (first === undefined) throw new Error("the file has nobody");
    await importClub(organiser, { text, matches: { [first.id]: organiser.userId } });
    const again = readClubFile(await textOf(organiser));
    expect(again.people.find(({ id }) => id === organiser.userId)?.name).toBe("Olga Organiser");
    expect(again.people.map(({ name }) => name)).toEqual(
      expect.arrayContaining(people.slice(1).map(({ name }) => name)),
    );
    const stranger = importClub((await newClub()).organiser, { text, matches: { [first.id]: randomUUID() } });
    await expect(stranger).rejects.toThrow("matched with nobody of this club");
  }, 120_000);

  it("needs an empty club, and leaves one with content as it is", async () => {
    const before = await listRecipes(demo);
    await expect(importClub(demo, { text, matches: {} })).rejects.toThrow("this one has content already");
    expect(await listRecipes(demo)).toEqual(before);
  });

  it("is all or nothing", async () => {
    const { organiser } = await newClub();
    const file = readClubFile(text);
    const parts = file.parts.map((part) => {
      if (part.table !== "brew_event") return part;
      const rows = part.rows.map((row, i) => (i === part.rows.length - 1 ? { ...row, value: 1e8, unit: "sg" } : row));
      return { ...part, rows, sha256: hashOfRows(rows) };
    });
    const broken = canonicalJson({ ...file, parts });
    await expect(importClub(organiser, { text: broken, matches: {} })).rejects.toThrow("“brew_event” break a rule");
    expect(await listRecipes(organiser)).toEqual([]);
  }, 120_000);

  it.each([
    ["no JSON", "nothing", /no JSON/],
    ["another file", "{}", /not the file of a club/],
    ["a part that was changed", () => text.replace('"title":"', '"title":"X'), /checksum does not match/],
    ["another version", () => text.replace('"version":1', '"version":2'), /another version than 1/],
    [
      "a table that is none of a club's",
      () => text.replace('{"table":"recipe",', '{"table":"app_user",'),
      /name of one of its tables/,
    ],
  ])("refuses %s", async (_what, given, words) => {
    const { organiser } = await newClub();
    const file = typeof given === "string" ? given : given();
    await expect(importClub(organiser, { text: file, matches: {} })).rejects.toThrow(words);
  });
});
