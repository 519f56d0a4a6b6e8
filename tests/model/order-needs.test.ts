import { describe, expect, it } from "vitest";
import { orderNeeds, type Held, type SheetNeeds } from "@/lib/model/order/order-needs";
import type { OrderThing } from "@/lib/model/order/order-words";
import { recipeNeeds } from "@/lib/model/order/recipe-needs";
import { recipeInput } from "@/lib/model/recipe-content";
import { sampleRecipe } from "../support/sample-recipe";

const MALT: OrderThing = { kind: "fermentable", name: "Pale malt", unit: "g" };
const RYE: OrderThing = { kind: "fermentable", name: "Rye malt", unit: "g" };
const held = (userId: string, thing: OrderThing, amount: number): Held => ({ userId, thing, amount });
const sheet = (userId: string, ...amounts: readonly (readonly [OrderThing, number])[]): SheetNeeds => ({
  userId,
  label: "Porter on Pot",
  brewId: null,
  needs: amounts.map(([thing, amount]) => ({ thing, amount })),
});
const NONE = { sheets: [], wants: [], onHand: [], instead: [] };

describe("orderNeeds", () => {
  it("rounds each member's sum up to whole grams, not each part", () => {
    const [malt] = orderNeeds({
      ...NONE,
      sheets: [sheet("a", [MALT, 100.4], [MALT, 200.4]), sheet("b", [MALT, 10.2])],
    });
    expect(malt?.members.map(({ needed }) => needed)).toEqual([301, 11]);
  });

  it("takes floating-point dust for no gram: three times 0.1 kg are 300 g", () => {
    const [malt] = orderNeeds({ ...NONE, sheets: [sheet("a", [MALT, (0.1 + 0.1 + 0.1) * 1000])] });
    expect(malt?.members[0]?.needed).toBe(300);
  });

  it("deducts stock from what sheets need, but not from what is wanted beside", () => {
    const [malt] = orderNeeds({
      ...NONE,
      sheets: [sheet("a", [MALT, 4000])],
      wants: [held("a", MALT, 5000)],
      onHand: [held("a", MALT, 9000), held("b", MALT, 9000)],
    });
    expect(malt?.members).toMatchObject([{ userId: "a", needed: 4000, onHand: 4000, wanted: 5000, amount: 5000 }]);
  });

  it("replaces only what stock does not cover, and counts stock of the other thing", () => {
    const needs = orderNeeds({
      ...NONE,
      sheets: [sheet("a", [MALT, 4000]), sheet("b", [MALT, 1000])],
      onHand: [held("a", MALT, 1000), held("a", RYE, 500)],
      instead: [{ userId: "a", from: MALT, to: RYE, ratio: 1.2 }],
    });
    const of = (name: string, userId: string) =>
      needs.find(({ thing }) => thing.name === name)?.members.find((member) => member.userId === userId);
    expect(of("Pale malt", "a")).toMatchObject({ needed: 1000, onHand: 1000, amount: 0 });
    // 3 kg are lacking; 1.2 of the other for each: 3.6 kg, of which 0.5 are there.
    expect(of("Rye malt", "a")).toMatchObject({ needed: 3600, onHand: 500, amount: 3100 });
    expect(of("Pale malt", "b")).toMatchObject({ amount: 1000 });
  });

  it("takes two spellings of a name for one thing", () => {
    const needs = orderNeeds({
      ...NONE,
      sheets: [sheet("a", [MALT, 1000])],
      wants: [held("b", { ...MALT, name: " pale MALT" }, 1000)],
    });
    expect(needs).toHaveLength(1);
  });
});

describe("recipeNeeds", () => {
  const recipe = recipeInput.parse(sampleRecipe());
  const needs = (cellsPerPiece: number | null) =>
    Object.fromEntries(
      recipeNeeds(recipe, { cellsBillion: 190, primingG: 120.5 }, () => cellsPerPiece).map(({ thing, amount }) => [
        `${thing.kind} ${thing.name}, ${thing.unit}`,
        amount,
      ]),
    );

  it("lists everything that the recipe takes", () => {
    expect(needs(null)).toEqual({
      "fermentable Pale malt, g": 4500,
      "fermentable Crystal malt, g": 300,
      "fermentable Sucrose, g": 120.5,
      "hop Bitter hop, g": 25,
      "hop Aroma hop, g": 40,
      "yeast Ale yeast, pcs": 1,
      "salt Gypsum, g": 4,
      "acid Lactic acid 80 %, mL": 4,
    });
  });

  it("counts packs of yeast by their cells: 190 billion are four packs of 50", () => {
    expect(needs(50)["yeast Ale yeast, pcs"]).toBe(4);
  });
});
