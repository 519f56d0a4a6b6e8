import { describe, expect, it } from "vitest";
import { matchedRows } from "@/lib/model/matched-rows";
import { recipeInput } from "@/lib/model/recipe-content";
import { recipeDifference } from "@/lib/model/recipe-difference";
import { readReference, writeReference } from "@/lib/model/revision-reference";
import { sampleRecipe } from "../support/sample-recipe";

type Sample = ReturnType<typeof sampleRecipe>;

const written = (change: Partial<Sample> = {}) => recipeInput.parse({ ...sampleRecipe(), ...change });

describe("recipeDifference", () => {
  it("is nothing for a recipe and itself", () => {
    expect(recipeDifference(written(), written())).toEqual([]);
  });

  it("tells a changed amount by its ingredient, wherever the row has moved to", () => {
    const [pale, crystal] = sampleRecipe().fermentables;
    if (pale === undefined || crystal === undefined) throw new Error("the sample has two malts");
    const after = written({ fermentables: [crystal, { ...pale, kg: 5 }] });
    expect(recipeDifference(written(), after)).toMatchObject([
      { group: "Fermentables", what: "Pale malt", field: "Amount", kind: "changed", before: 4.5, after: 5 },
    ]);
  });

  it("tells what came and what went by its amount alone", () => {
    const [bitter] = sampleRecipe().hops;
    if (bitter === undefined) throw new Error("the sample has hops");
    const after = written({ hops: [bitter, { ...bitter, name: "New hop", grams: 12 }] });
    expect(recipeDifference(written(), after)).toMatchObject([
      { what: "New hop, boil", kind: "added", before: null, after: 12 },
      { what: "Aroma hop, stand", kind: "removed", before: 40, after: null },
    ]);
  });

  it("tells a hop that goes in elsewhere as one hop that was moved", () => {
    const [bitter, aroma] = sampleRecipe().hops;
    if (bitter === undefined || aroma === undefined) throw new Error("the sample has two hops");
    const after = written({ hops: [bitter, { ...aroma, use: "boil", minutes: 20 }] });
    expect(recipeDifference(written(), after)).toMatchObject([
      { field: "Use of the hop", kind: "changed", before: "stand", after: "boil" },
    ]);
  });

  it("tells settings, salts and the stand, a salt that was left out as none of it", () => {
    const { water } = sampleRecipe();
    const after = written({ boil: 75, water: { ...water, salts: { gypsum: 6 } } });
    expect(recipeDifference(written(), after)).toMatchObject([
      { what: "Boil", before: 60, after: 75 },
      { what: "Gypsum", before: 4, after: 6 },
    ]);
  });

  it("turned round, is the same with before and after in each other's place", () => {
    const after = written({ boil: 90, mash: [{ celsius: 64, minutes: 60 }] });
    const there = recipeDifference(written(), after).map(({ key, before, after: to }) => ({ key, before, to }));
    const back = recipeDifference(after, written()).map(({ key, before, after: to }) => ({
      key,
      before: to,
      to: before,
    }));
    expect(new Set(back.map((change) => JSON.stringify(change)))).toEqual(
      new Set(there.map((change) => JSON.stringify(change))),
    );
  });
});

describe("matchedRows", () => {
  it("pairs every row once, the closest first", () => {
    const pairs = matchedRows(["a1", "a2", "b1"], ["a2", "a3"], [(row) => row, (row) => row.charAt(0)]);
    expect(pairs).toEqual([
      { before: "a2", after: "a2" },
      { before: "a1", after: "a3" },
      { before: "b1", after: null },
    ]);
  });
});

describe("a reference to a revision", () => {
  const far = { recipe: { spaceSlug: "club", recipeId: "6f8a2c4e-1b2d-4c3e-8f5a-9b7c6d5e4f3a" }, rev: 3 };

  it("is read as it was written", () => {
    for (const reference of [far, { recipe: null, rev: 12 }]) {
      expect(readReference(writeReference(reference))).toEqual(reference);
    }
  });

  it.each(["", "0", "x", "1.5", "club:3", "club:not-an-id:3", "club:6f8a2c4e-1b2d-4c3e-8f5a-9b7c6d5e4f3a:"])(
    "is none where it is written “%s”",
    (text) => {
      expect(readReference(text)).toBeNull();
    },
  );
});
