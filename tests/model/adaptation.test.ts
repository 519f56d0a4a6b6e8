import { describe, expect, it } from "vitest";
import type { Recipe } from "@/lib/calc/ledger";
import { adaptationChoice, adaptWith, NO_CHOICE, wayName, type AdaptationChoice } from "@/lib/model/adaptation";
import { equipmentInput } from "@/lib/model/equipment";
import { fermentableLotFigures, hopLotFigures, type LotFigures } from "@/lib/model/lot";
import { recipeContent } from "@/lib/model/recipe-content";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { sampleContent, sampleEquipment } from "../support/sample-recipe";

const LOT = "8c9b2a52-3f5e-4a62-9d0e-3f1f6f0c1a01";
const content = recipeContent.parse(sampleContent());

function adapted(choice: Partial<AdaptationChoice>, lot?: LotFigures, equipment: object = sampleEquipment()) {
  const written = recipeIntention(content);
  if (written === null) throw new Error("the sample recipe does not brew");
  return adaptWith({
    content,
    written,
    equipment: equipmentInput.parse(equipment),
    choice: { ...NO_CHOICE, ...choice },
    lots: new Map(lot === undefined ? [] : [[LOT, lot]]),
  });
}

function recipeOf(choice: Partial<AdaptationChoice>, lot?: LotFigures): Recipe {
  const { chosen } = adapted(choice, lot);
  if (chosen === null) throw new Error("the sample recipe does not fit");
  return chosen.recipe;
}

const smallKettle = () => {
  const { kettle, mash, ...rest } = sampleEquipment();
  return { ...rest, kettle, mash: { ...mash, grainLimit: 4 } };
};

describe("adaptWith", () => {
  it("takes twice the hops of half the alpha acids for the same bitterness, and no other hop changes", () => {
    const [before, aroma] = recipeOf({}).hops;
    const half: LotFigures = { kind: "hop", figures: hopLotFigures.parse({ alpha: 0.05 }) };
    const [after, sameAroma] = recipeOf({ lots: { "hops.0": LOT } }, half).hops;
    // The kettle's own hop absorption moves the volumes a little, so not to the last digit.
    expect((after?.grams ?? 0) / (before?.grams ?? 0)).toBeCloseTo(2, 1);
    expect(after?.alpha).toBe(0.05);
    expect((sameAroma?.grams ?? 0) / (aroma?.grams ?? 0)).toBeCloseTo(1, 1);
  });

  it("takes more of a sack that holds more water, as its dry mass asks", () => {
    const damp: LotFigures = {
      kind: "fermentable",
      figures: fermentableLotFigures.parse({ extract: null, moisture: 0.08, colour: null }),
    };
    const { chosen: before } = adapted({});
    const { chosen: after } = adapted({ lots: { "fermentables.0": LOT } }, damp);
    const kgOf = (sheet: typeof before): number => sheet?.recipe.fermentables[0]?.kg ?? NaN;
    // Dry mass 0.96 and 0.92 of the whole; more grain also keeps more wort, which asks for a little more again.
    expect(kgOf(after) / kgOf(before)).toBeGreaterThan(0.96 / 0.92);
    expect(kgOf(after) / kgOf(before)).toBeLessThan(1.02 * (0.96 / 0.92));
    const strengthOf = (sheet: typeof before): number => sheet?.ledger.quantities["fermenter.originalExtract"] ?? NaN;
    expect(strengthOf(after)).toBeCloseTo(strengthOf(before), 6);
  });

  it("leaves the recipe's figures where the lot is not there any more", () => {
    expect(recipeOf({ lots: { "hops.0": LOT } })).toEqual(recipeOf({}));
  });

  it("has no recipe for a kettle that it does not fit until a way out is chosen", () => {
    const { outcome, chosen } = adapted({}, undefined, smallKettle());
    expect(outcome.ok).toBe(false);
    expect(chosen).toBeNull();
    const way = outcome.ok ? undefined : outcome.waysOut[0];
    if (way === undefined) throw new Error("no way out");
    expect(adapted({ way: wayName(way) }, undefined, smallKettle()).chosen?.way).toEqual(way);
  });

  it("says so when the way that was chosen is no longer there", () => {
    const { chosen, isWayLost } = adapted({ way: "fewer rests and longer boil" }, undefined, smallKettle());
    expect({ chosen, isWayLost }).toEqual({ chosen: null, isWayLost: true });
  });
});

describe("adaptationChoice", () => {
  it.each([
    ["another volume", { volume: "double" }],
    ["a way without a name", { way: "" }],
    ["a lot for no row", { lots: { title: LOT } }],
    ["a lot without an identifier", { lots: { "hops.0": "the good one" } }],
    ["a field of no meaning", { more: 1 }],
  ])("refuses %s", (_, change) => {
    expect(adaptationChoice.safeParse({ ...NO_CHOICE, ...change }).success).toBe(false);
  });
});
