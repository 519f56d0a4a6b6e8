import { describe, expect, it } from "vitest";
import { newRecipe } from "@/lib/model/recipe-content";
import { inSpace } from "@/lib/server/db";
import { listRecipes } from "@/lib/server/recipes/list";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import { createRecipe, saveRevision } from "@/lib/server/recipes/writes";
import { parsedRecipe } from "../support/brewing";
import { newClub } from "../support/club";
import { sampleContent } from "../support/sample-recipe";

const withNotes = (notes: string) =>
  newRecipe.parse({ title: "Test ale", content: { ...sampleContent(), notes }, message: "" });

describe("recipes", () => {
  it("are read back as they were written", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const found = await findRecipe(organiser, id);
    expect(found).toMatchObject({ id, title: "Test ale", rev: 1, headRev: 1, authorName: "Olga Organiser" });
    expect(found?.content).toEqual(sampleContent());
    expect(await listRecipes(organiser)).toMatchObject([{ id, title: "Test ale", headRev: 1 }]);
  });

  it("keep every revision as it was", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const second = { id, baseRev: 1, ...withNotes("second"), title: "Better ale" };
    expect(await saveRevision(organiser, second)).toEqual({ ok: true, rev: 2 });
    expect((await findRevision(organiser, id, 1))?.content.notes).toBe("");
    expect((await findRevision(organiser, id, 2))?.content.notes).toBe("second");
    expect(await findRevision(organiser, id, 3)).toBeNull();
    expect(await findRecipe(organiser, id)).toMatchObject({ rev: 2, title: "Better ale" });
  });

  it("let one of twenty simultaneous saves on one base through and tell the others", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const outcomes = await Promise.all(
      Array.from({ length: 20 }, (_, index) =>
        saveRevision(organiser, { id, baseRev: 1, ...withNotes(`save ${String(index)}`) }),
      ),
    );
    const stale = { ok: false, reason: "stale", headRev: 2 };
    expect(outcomes.filter((outcome) => outcome.ok)).toEqual([{ ok: true, rev: 2 }]);
    expect(outcomes.filter((outcome) => !outcome.ok)).toEqual(Array.from({ length: 19 }, () => stale));
    expect(await findRevision(organiser, id, 3)).toBeNull();
  });

  it("tell a late saver which revision is the newest", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    await saveRevision(organiser, { id, baseRev: 1, ...withNotes("quick") });
    const late = await saveRevision(organiser, { id, baseRev: 1, ...withNotes("late") });
    expect(late).toEqual({ ok: false, reason: "stale", headRev: 2 });
    expect((await findRecipe(organiser, id))?.content.notes).toBe("quick");
  });

  it("make no revision of what did not change, in whatever order its fields come", async () => {
    const { organiser } = await newClub();
    const recipe = parsedRecipe();
    const { id } = await createRecipe(organiser, recipe);
    const reversed = Object.fromEntries(Object.entries(recipe.content).reverse()) as typeof recipe.content;
    const outcome = await saveRevision(organiser, { id, baseRev: 1, ...recipe, content: reversed });
    expect(outcome).toEqual({ ok: false, reason: "unchanged" });
  });

  it("leave nothing behind when the second statement of a save fails", async () => {
    const { organiser } = await newClub();
    const good = parsedRecipe();
    // Past the form, and more than the column takes: the recipe's row goes in first and has to go again.
    const tooLarge = { ...good, content: { ...good.content, notes: "x".repeat(300_000) } };
    await expect(createRecipe(organiser, tooLarge)).rejects.toThrow();
    expect(await listRecipes(organiser)).toEqual([]);

    const { id } = await createRecipe(organiser, good);
    await expect(saveRevision(organiser, { id, baseRev: 1, ...tooLarge, title: "Half" })).rejects.toThrow();
    expect(await findRecipe(organiser, id)).toMatchObject({ headRev: 1, title: "Test ale" });
  });

  it("are written by members and organisers only", async () => {
    const club = await newClub("member", "judge", "steward", "guest");
    await expect(createRecipe(club.member, parsedRecipe())).resolves.toHaveProperty("id");
    for (const reader of [club.judge, club.steward, club.guest]) {
      await expect(createRecipe(reader, parsedRecipe())).rejects.toThrow(
        "Only members and organisers write recipes here.",
      );
      expect(await listRecipes(reader)).toHaveLength(1);
    }
  });

  it("have a history that the database does not let anybody change", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const rewriting = inSpace(organiser.spaceId, organiser.userId, (tx) =>
      tx.recipeRevision.updateMany({
        where: { spaceId: organiser.spaceId, recipeId: id },
        data: { message: "rewritten" },
      }),
    );
    await expect(rewriting).rejects.toThrow();
  });
});
