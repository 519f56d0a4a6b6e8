import { describe, expect, it } from "vitest";
import { findGeneric } from "@/lib/model/generic-ingredients";
import { newRecipe } from "@/lib/model/recipe-content";
import { findUses } from "@/lib/server/ingredients/uses";
import { createRecipe } from "@/lib/server/recipes/writes";
import { newBrewing } from "../support/brewing";
import { newClub } from "../support/club";
import { ownHop } from "../support/lots";
import { sampleContent, sampleRecipe } from "../support/sample-recipe";

function withHop(name: string) {
  const recipe = sampleRecipe();
  const hops = recipe.hops.map((hop) => ({ ...hop, name }));
  return newRecipe.parse({ title: name, content: { ...sampleContent(), recipe: { ...recipe, hops } }, message: "" });
}

describe("where an ingredient is used", () => {
  it("is told of recipes and brews of the own club only, whatever the letters", async () => {
    const [{ organiser, member }, { organiser: outsider }] = [await newClub("member"), await newClub()];
    const { recipeId, brewId } = await newBrewing(organiser, member);
    const name = sampleRecipe().hops[0]?.name ?? "";
    const hop = ownHop().what;
    const use = await findUses(member, `  ${name.toUpperCase()} `, hop);
    expect(use.recipes).toEqual([{ id: recipeId, title: "Test ale", rev: 1 }]);
    expect(use.brews).toEqual([{ id: brewId, title: "Test ale", state: "planned" }]);
    expect(await findUses(outsider, name, hop)).toEqual({ recipes: [], brews: [] });
  });

  it.each(["Hop (wild) .*+?", `Quote " and ' hop`, "Columbus (CTZ)", "Größe №5", String.raw`Back\slash $text`])(
    "takes the name %s as it is, and no pattern",
    async (name) => {
      const { member } = await newClub("member");
      await createRecipe(member, withHop(name));
      await createRecipe(member, withHop("Another hop"));
      expect((await findUses(member, name, ownHop().what)).recipes.map(({ title }) => title)).toEqual([name]);
      expect((await findUses(member, ".*", ownHop().what)).recipes).toEqual([]);
    },
  );

  it("is told of yeasts, salts and acids too", async () => {
    const { member } = await newClub("member");
    await createRecipe(member, withHop("Any"));
    const of = async (slug: string): Promise<number> => {
      const generic = findGeneric(slug);
      if (generic === null) throw new Error(`no generic ingredient ${slug}`);
      return (await findUses(member, generic.name, generic.what)).recipes.length;
    };
    const { salts, acid } = sampleRecipe().water;
    expect([Object.keys(salts), acid.solution.acid]).toEqual([["gypsum"], "lactic"]);
    expect(await of("salt-gypsum")).toBe(1);
    expect(await of("salt-chalk")).toBe(0);
    expect(await of("acid-lactic-acid-80")).toBe(1);
    expect(await of("acid-hydrochloric-acid-10")).toBe(0);
  });
});
