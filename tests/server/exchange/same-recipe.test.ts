import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Recipe } from "@/lib/calc/ledger";
import { minutes } from "@/lib/calc/units";
import { exportedText, type ExportKind } from "@/lib/model/exchange/export-file";
import { recipeInput, type RecipeContent } from "@/lib/model/recipe-content";
import { readRecipeFile } from "@/lib/server/exchange/read-file";
import { garageKettle, sameDay } from "../../support/brewing-fixtures";
import { bytesOf } from "../../support/exchange-files";
import { expectWithin } from "../../support/expect-within";
import { recipes } from "../../support/random-brews";

const RUNS = 40;

/** A random recipe without what contradicts itself, since no revision holds that. */
const believable = recipes
  .map((recipe): Recipe => {
    const { boil, stand } = recipe;
    const hops = recipe.hops.map((hop) => {
      const use = hop.use === "stand" && stand === null ? "boil" : hop.use;
      const most = use === "stand" && stand !== null ? stand.minutes : boil;
      return { ...hop, use, minutes: minutes(use === "dry" ? 0 : Math.min(hop.minutes, most)) };
    });
    return { ...recipe, hops, mashes: 1 };
  })
  .filter((recipe) => recipe.mash.length > 0 && recipeInput.safeParse(recipe).success);

function thereAndBack(kind: ExportKind, recipe: Recipe): Recipe {
  const content: RecipeContent = {
    recipe,
    entered: {},
    style: null,
    notes: "",
    writtenOn: { name: garageKettle.name, equipment: garageKettle, ambient: sameDay },
  };
  const text = exportedText(kind, [{ title: "Random ale", author: "Nobody", content, leftover: null }]);
  const [read] = readRecipeFile(bytesOf(text), garageKettle).recipes;
  expect(read?.problems).toEqual([]);
  if (read === undefined || read.content === null) throw new Error("the recipe was not taken");
  return read.content.recipe;
}

/** Seven digits come back of the eight that are written; of a share, no less than a millionth of a per cent. */
const near = (actual: number, expected: number): void =>
  expectWithin(actual, expected, 1e-6 * Math.max(1e-2, Math.abs(expected)));

const isGrain = ({ kind }: Recipe["fermentables"][number]): boolean => kind === "malt" || kind === "adjunct";

/** `isGrainAlone` where only grain has a moisture of its own, and of all else the extract in its weight comes back. */
function expectSame(after: Recipe, before: Recipe, isGrainAlone = false): void {
  near(after.intoFermenter, before.intoFermenter);
  near(after.topUp, before.topUp);
  expect(after.boil).toBe(before.boil);
  expect(after.mash.map((rest) => rest.minutes)).toEqual(before.mash.map((rest) => rest.minutes));
  after.mash.forEach((rest, i) => near(rest.celsius, before.mash[i]?.celsius ?? Number.NaN));
  expect(after.fermentables.map(({ name, kind, station }) => [name, kind, station])).toEqual(
    before.fermentables.map(({ name, kind, station }) => [name, kind, station]),
  );
  after.fermentables.forEach((row, i) => {
    const was = before.fermentables[i];
    if (was === undefined) throw new Error("a row came back that was not there");
    near(row.kg, was.kg);
    near(row.extract * (1 - row.moisture), was.extract * (1 - was.moisture));
    if (isGrain(row) || !isGrainAlone) for (const key of ["extract", "moisture"] as const) near(row[key], was[key]);
    // Below 0.76 SRM malt colour has no Lovibond, so it comes back as none at all.
    expectWithin(row.colour, before.fermentables[i]?.colour ?? Number.NaN, 1e-5 * Math.max(1, row.colour));
  });
  expect(after.hops.map(({ name, use, minutes: at }) => [name, use, at])).toEqual(
    before.hops.map(({ name, use, minutes: at }) => [name, use, at]),
  );
  after.hops.forEach((hop, i) => {
    for (const key of ["grams", "alpha"] as const) near(hop[key], before.hops[i]?.[key] ?? Number.NaN);
  });
  expect(Object.keys(after.water.salts).sort()).toEqual(Object.keys(before.water.salts).sort());
  near(after.water.source.calcium, before.water.source.calcium);
  near(after.water.acid?.ml ?? 0, before.water.acid?.ml ?? 0);
  near(after.packaging.carbonation, before.packaging.carbonation);
  near(after.packaging.warmest, before.packaging.warmest);
  near(after.yeast.celsius, before.yeast.celsius);
}

describe("any recipe that is exported and taken again", () => {
  it.each(["beerjson-2.06", "beerjson-3.0"] as const)("is the same in %s, to the digits that are written", (kind) => {
    fc.assert(
      fc.property(believable, (before) => {
        const after = thereAndBack(kind, before);
        expectSame(after, before);
        near(after.thickness ?? 0, before.thickness ?? 0);
        expect(after.stand?.minutes).toBe(before.stand?.minutes);
        near(after.yeast.attenuationLow, before.yeast.attenuationLow);
        near(after.yeast.attenuationHigh, before.yeast.attenuationHigh);
        expect(after.packaging.container).toBe(before.packaging.container);
      }),
      { numRuns: RUNS },
    );
  });

  it("is the same in BeerXML, but for what that has no tag for", () => {
    fc.assert(
      fc.property(believable, (before) => {
        const after = thereAndBack("beerxml-1.0", before);
        expectSame(after, before, true);
        const middle = ({ attenuationLow, attenuationHigh }: Recipe["yeast"]): number =>
          (attenuationLow + attenuationHigh) / 2;
        expectWithin(middle(after.yeast), middle(before.yeast), 0.021);
      }),
      { numRuns: RUNS },
    );
  });
});
