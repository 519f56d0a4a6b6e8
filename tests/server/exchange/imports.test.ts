import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { exportedText } from "@/lib/model/exchange/export-file";
import { newRecipe } from "@/lib/model/recipe-content";
import { recipesToExport } from "@/lib/server/exchange/export-recipes";
import { importRecipes, readForImport } from "@/lib/server/exchange/import-recipes";
import { listImports, withdrawImport } from "@/lib/server/exchange/imports";
import { createEquipment } from "@/lib/server/equipment/writes";
import { newEquipment } from "@/lib/model/equipment";
import { listRecipes } from "@/lib/server/recipes/list";
import { findRecipe } from "@/lib/server/recipes/reads";
import { saveRevision } from "@/lib/server/recipes/writes";
import { newClub } from "../../support/club";
import { beerJsonFile, beerXmlFile, bytesOf } from "../../support/exchange-files";
import { sampleEquipment } from "../../support/sample-recipe";

const whole = (bytes: Uint8Array) => ({ bytes, kettle: null, chosen: [0] });

describe("an import", () => {
  it("stores nothing while it is only looked at", async () => {
    const { organiser } = await newClub();
    await readForImport(organiser, { bytes: beerJsonFile(), kettle: null });
    expect(await listRecipes(organiser)).toEqual([]);
  });

  it("makes recipes of the chosen ones, written for the kettle derived from the file", async () => {
    const { member } = await newClub("member");
    const { recipes } = await importRecipes(member, whole(beerXmlFile()));
    const found = await findRecipe(member, recipes[0]?.id ?? "");
    expect(found).toMatchObject({ title: "Invented lock porter", rev: 1, message: "Imported from a BeerXML file" });
    expect(found?.content.writtenOn.name).toBe("Kettle of the file");
  });

  it("is written for a kettle of the club, where one is chosen", async () => {
    const { member } = await newClub("member");
    const { id } = await createEquipment(member, newEquipment.parse({ equipment: sampleEquipment() }));
    const { recipes } = await importRecipes(member, { bytes: beerXmlFile(), kettle: id, chosen: [0] });
    expect((await findRecipe(member, recipes[0]?.id ?? ""))?.content.writtenOn.name).toBe("Test kettle");
    const elsewhere = (await newClub()).organiser;
    const asked = importRecipes(elsewhere, { bytes: beerXmlFile(), kettle: id, chosen: [0] });
    await expect(asked).rejects.toThrow("There is no such kettle here.");
  });

  it("takes all that were chosen or nothing", async () => {
    const { member } = await newClub("member");
    const document = JSON.parse(new TextDecoder().decode(beerJsonFile())) as {
      readonly beerjson: { recipes: unknown[] };
    };
    document.beerjson.recipes.push({ name: "Without anything" });
    const both = importRecipes(member, { bytes: bytesOf(JSON.stringify(document)), kettle: null, chosen: [0, 1] });
    await expect(both).rejects.toThrow("cannot be taken");
    expect(await listRecipes(member)).toEqual([]);
  });

  it("is for those who write recipes", async () => {
    const { judge } = await newClub("judge");
    await expect(importRecipes(judge, whole(beerJsonFile()))).rejects.toThrow("Only members and organisers");
    await expect(readForImport(judge, { bytes: beerJsonFile(), kettle: null })).rejects.toThrow("Only members");
  });
});

describe("what an import left over", () => {
  it("is written back from the revision, and from a later one", async () => {
    const { member } = await newClub("member");
    const { recipes } = await importRecipes(member, whole(beerJsonFile()));
    const id = recipes[0]?.id ?? "";
    const found = await findRecipe(member, id);
    if (found === null) throw new Error("the recipe is not there");
    const content = { ...found.content, notes: "Changed" };
    await saveRevision(member, {
      id,
      baseRev: 1,
      ...newRecipe.parse({ title: "Changed bitter", content, message: "" }),
    });

    const [newest] = await recipesToExport(member, { ids: [id], rev: null });
    const [first] = await recipesToExport(member, { ids: [id], rev: 1 });
    if (newest === undefined || first === undefined) throw new Error("nothing to export");
    const text = exportedText("beerjson-2.06", [newest]);
    for (const kept of ["house_code", "Nobody Atall", "Towpath berries", "Changed bitter"])
      expect(text).toContain(kept);
    expect(text).not.toContain("Not a recipe of anybody");
    expect(exportedText("beerjson-2.06", [first])).toContain("Not a recipe of anybody");
  });

  it("is not found from another club", async () => {
    const { member } = await newClub("member");
    const { recipes } = await importRecipes(member, whole(beerJsonFile()));
    const { organiser } = await newClub();
    const asked = recipesToExport(organiser, { ids: [recipes[0]?.id ?? ""], rev: null });
    await expect(asked).rejects.toThrow("There is no such recipe here.");
  });
});

describe("withdrawing an import", () => {
  it("takes all its recipes back", async () => {
    const { member } = await newClub("member");
    const { importId } = await importRecipes(member, whole(beerJsonFile()));
    expect(await listImports(member)).toMatchObject([{ id: importId, mayWithdraw: true }]);
    await withdrawImport(member, importId);
    expect(await listRecipes(member)).toEqual([]);
    expect(await listImports(member)).toEqual([]);
    await expect(withdrawImport(member, importId)).rejects.toThrow("There is no such import here.");
  });

  it("is refused, by name, once a recipe of it was revised", async () => {
    const { member } = await newClub("member");
    const { importId, recipes } = await importRecipes(member, whole(beerJsonFile()));
    const id = recipes[0]?.id ?? "";
    const found = await findRecipe(member, id);
    if (found === null) throw new Error("the recipe is not there");
    const content = { ...found.content, notes: "Changed" };
    await saveRevision(member, { id, baseRev: 1, ...newRecipe.parse({ title: found.title, content, message: "" }) });
    await expect(withdrawImport(member, importId)).rejects.toThrow("“Invented weir bitter” has been revised");
    expect(await listRecipes(member)).toHaveLength(1);
  });

  it("is for who imported it and for organisers", async () => {
    const { organiser, member, judge } = await newClub("member", "judge");
    const other = (await newClub("member")).member;
    const { importId } = await importRecipes(organiser, whole(beerJsonFile()));
    await expect(withdrawImport(member, importId)).rejects.toThrow("Only who imported this");
    await expect(withdrawImport(judge, importId)).rejects.toThrow("Only members and organisers");
    await expect(withdrawImport(other, importId)).rejects.toThrow("There is no such import here.");
    await expect(withdrawImport(organiser, randomUUID())).rejects.toThrow("There is no such import here.");
  });
});
