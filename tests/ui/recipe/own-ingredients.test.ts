import { describe, expect, it } from "vitest";
import type { ClubIngredient } from "@/lib/model/ingredient";
import { offeredInRecipes, withOwn } from "@/lib/ui/recipe/own-ingredients";
import { ownHop } from "../../support/lots";

const kept = (name: string, isArchived = false): ClubIngredient => ({
  id: name,
  ...ownHop({ name }),
  lockVersion: 1,
  isArchived,
  createdByName: "Some member",
  mayWrite: true,
});

describe("the club's ingredients in the editor", () => {
  it("come before the lists, and the club's word on a name replaces the list's", () => {
    const own = offeredInRecipes([kept("Garden hop"), kept("CASCADE"), kept("Old hop", true)]);
    const listed = { name: "Cascade", alphaLow: own.hops[0]?.alphaLow, alphaHigh: own.hops[0]?.alphaHigh };
    const lists = {
      fermentables: [],
      yeasts: [],
      hops: own.hops.slice(0, 0).concat(listed as (typeof own.hops)[number]),
    };
    expect(withOwn(lists, own).hops.map(({ name }) => name)).toEqual(["Garden hop", "CASCADE"]);
  });

  it("keep what else the lists hold", () => {
    const lists = { fermentables: [], hops: [], yeasts: [], styles: ["18B"] };
    expect(withOwn(lists, offeredInRecipes([])).styles).toEqual(["18B"]);
  });
});
