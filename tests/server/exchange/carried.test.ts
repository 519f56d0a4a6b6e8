import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { litres } from "@/lib/calc/units";
import { exportedText } from "@/lib/model/exchange/export-file";
import { newCopy } from "@/lib/model/lineage";
import { copyOfPublication, newPublication } from "@/lib/model/publication";
import { newRecipe } from "@/lib/model/recipe-content";
import { directory, inSpace } from "@/lib/server/db";
import { recipesToExport } from "@/lib/server/exchange/export-recipes";
import { listExportReports } from "@/lib/server/exchange/export-reports";
import { importRecipes } from "@/lib/server/exchange/import-recipes";
import { listImports, withdrawImport } from "@/lib/server/exchange/imports";
import { copyPublished } from "@/lib/server/publications/copy";
import { publishRecipe, withdrawRecipe } from "@/lib/server/publications/writes";
import { copyRevision } from "@/lib/server/recipes/copy";
import { findRecipe } from "@/lib/server/recipes/reads";
import { createRecipe, saveRevision } from "@/lib/server/recipes/writes";
import { proveMember, type Member } from "@/lib/server/session";
import { newClub } from "../../support/club";
import { beerJsonFile, beerXmlFile } from "../../support/exchange-files";

/** Not in the standard, in a row that this book has no place for, and in a row that it has. */
const UNKNOWN = ["house_code", "Towpath berries"];

async function imported(member: Member, bytes = beerJsonFile()): Promise<string> {
  const { recipes } = await importRecipes(member, { bytes, kettle: null, chosen: [0] });
  return recipes[0]?.id ?? "";
}

async function exported(member: Member, id: string, kind: "beerjson-2.06" | "beerxml-1.0" = "beerjson-2.06") {
  return exportedText(kind, await recipesToExport(member, { ids: [id], rev: null }));
}

const copyOf = (recipeId: string, rev = 1) => newCopy.parse({ id: randomUUID(), recipeId, rev, title: "A copy" });

async function revise(member: Member, id: string): Promise<void> {
  const found = await findRecipe(member, id);
  if (found === null) throw new Error("the recipe is not there");
  const content = { ...found.content, notes: "Changed" };
  await saveRevision(member, { id, baseRev: found.rev, ...newRecipe.parse({ title: "Ours", content, message: "" }) });
}

async function alsoIn(member: Member, club: Member): Promise<Member> {
  await directory.membership.create({ data: { spaceId: club.spaceId, userId: member.userId, role: "member" } });
  const there = await proveMember(member, club.spaceSlug);
  if (there === null) throw new Error("the test's own set-up failed");
  return there;
}

describe("what an import left over", () => {
  it("goes on with a copy in the club, and with the copy's own revisions", async () => {
    const { member } = await newClub("member");
    const id = await imported(member);
    const copy = await copyRevision(member, member, copyOf(id));
    for (const unknown of UNKNOWN) expect(await exported(member, copy.id)).toContain(unknown);
    await revise(member, copy.id);
    const revised = await exported(member, copy.id);
    for (const unknown of [...UNKNOWN, "Ours"]) expect(revised).toContain(unknown);
  });

  it("goes on with a copy into another club, and with a copy of that", async () => {
    const { member } = await newClub("member");
    const there = await alsoIn(member, (await newClub()).organiser);
    const first = await copyRevision(member, there, copyOf(await imported(member, beerXmlFile())));
    const second = await copyRevision(there, there, copyOf(first.id));
    for (const { id } of [first, second]) {
      const text = await exported(there, id, "beerxml-1.0");
      for (const unknown of ["HOUSE_CODE", "Towpath spice", "DIASTATIC_POWER"]) expect(text).toContain(unknown);
    }
  });

  it("goes on with a copy of a later revision, as it holds for that", async () => {
    const { member } = await newClub("member");
    const id = await imported(member);
    await revise(member, id);
    const copy = await copyRevision(member, member, copyOf(id, 2));
    const text = await exported(member, copy.id);
    for (const unknown of UNKNOWN) expect(text).toContain(unknown);
    expect(text).not.toContain("Not a recipe of anybody");
  });

  it("goes on where somebody saves their own way on from a recipe that has changed meanwhile", async () => {
    const { member } = await newClub("member");
    const id = await imported(member);
    const found = await findRecipe(member, id);
    if (found === null) throw new Error("the recipe is not there");
    const own = newRecipe.parse({ title: "My way on", content: found.content, message: "" });
    const copy = await createRecipe(member, own, id);
    for (const unknown of UNKNOWN) expect(await exported(member, copy.id)).toContain(unknown);
  });

  it("goes on with a copy of what is published, without the names of people", async () => {
    const { organiser } = await newClub();
    const id = await imported(organiser);
    expect(await exported(organiser, id)).toContain("Nobody Atall");
    const { address } = await publishRecipe(organiser, newPublication.parse({ recipeId: id, rev: 1 }));
    const reader = (await newClub()).organiser;
    const copy = await copyPublished(reader, copyOfPublication.parse({ id: randomUUID(), address, title: "Theirs" }));
    const text = await exported(reader, copy.id);
    for (const unknown of UNKNOWN) expect(text).toContain(unknown);
    expect(text).not.toContain("Nobody Atall");
    expect(text).toContain("Olga Organiser");
  });

  it("is not kept where everybody reads once the publication is withdrawn", async () => {
    const { organiser } = await newClub();
    const id = await imported(organiser);
    const { address } = await publishRecipe(organiser, newPublication.parse({ recipeId: id, rev: 1 }));
    await withdrawRecipe(organiser, address);
    const { spaceId, userId } = organiser;
    const row = await inSpace(spaceId, userId, (tx) => tx.publicRecipe.findUniqueOrThrow({ where: { address } }));
    expect([row.leftover, row.leftoverFormat, row.leftoverVersion]).toEqual([null, null, null]);
  });
});

describe("the report of an export", () => {
  it("counts what goes back, and names what a revision has overtaken, of a copy too", async () => {
    const { member } = await newClub("member");
    const id = await imported(member);
    const before = (await listExportReports(member)).get(id);
    expect(before).toMatchObject({ format: "beerjson", lost: [] });
    const found = await findRecipe(member, id);
    if (found === null) throw new Error("the recipe is not there");
    const { recipe } = found.content;
    const [first, ...others] = recipe.fermentables;
    const content = { ...found.content, recipe: { ...recipe, fermentables: others, intoFermenter: litres(25) } };
    await saveRevision(member, { id, baseRev: 1, ...newRecipe.parse({ title: found.title, content, message: "" }) });
    const copy = await copyRevision(member, member, copyOf(id, 2));
    const reports = await listExportReports(member);
    const after = reports.get(id);
    expect(after?.lost).toContainEqual({ place: "batch_size", said: "5 gal" });
    expect(after?.lost.some(({ place }) => place.includes(first?.name ?? "never"))).toBe(true);
    expect((after?.back ?? 0) + (after?.lost.length ?? 0)).toBe(before?.back);
    expect(reports.get(copy.id)).toEqual(after);
    expect((await listExportReports((await newClub()).organiser)).size).toBe(0);
  });
});

describe("a copy of an imported recipe", () => {
  it("is no part of the import, and stays when that is withdrawn", async () => {
    const { member } = await newClub("member");
    const id = await imported(member);
    const copy = await copyRevision(member, member, copyOf(id));
    const [only, ...others] = await listImports(member);
    expect(others).toEqual([]);
    expect(only?.recipes.map((recipe) => recipe.id)).toEqual([id]);
    await withdrawImport(member, only?.id ?? "");
    for (const unknown of UNKNOWN) expect(await exported(member, copy.id)).toContain(unknown);
  });
});
