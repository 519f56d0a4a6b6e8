import type { Fermentable, HopAddition, Recipe } from "../ledger";
import {
  celsius,
  ebc,
  fraction,
  grams,
  kilograms,
  litres,
  litresPerKilogram,
  millionPerMlPlato,
  minutes,
  volumesCo2,
} from "../units";
import { ofRecipe, possible, type Nudge } from "./nudge";

/** Changes of the recipe. The volume wanted in the fermenter stays, unless that is what changes. */
export const RECIPE_NUDGES = {
  "10 % more grist": ofRecipe((recipe) => grist(recipe, 1.1)),
  "10 % less grist": ofRecipe((recipe) => grist(recipe, 0.9)),
  "malt with 1 percentage point less extract": ofRecipe((recipe) =>
    eachMashed(recipe, (row) => {
      const extract = possible(fraction, row.extract - 0.01);
      return extract === null ? null : { ...row, extract };
    }),
  ),
  "malt 10 % darker": ofRecipe((recipe) =>
    eachMashed(recipe, (row) => {
      const colour = possible(ebc, row.colour * 1.1);
      return colour === null ? null : { ...row, colour };
    }),
  ),
  "nothing but grist: no sugar, no malt extract": ofRecipe((recipe) => {
    const mashed = recipe.fermentables.filter((row) => row.station === "mash");
    return mashed.length === 0 || mashed.length === recipe.fermentables.length ? null : { fermentables: mashed };
  }),
  "10 % more wort into the fermenter": ofRecipe(({ intoFermenter }) => volume(intoFermenter * 1.1)),
  "10 % less wort into the fermenter": ofRecipe(({ intoFermenter }) => volume(intoFermenter * 0.9)),
  "a tenth of the volume as water after the boil": ofRecipe(({ intoFermenter }) => ({
    topUp: litres(intoFermenter / 10),
  })),
  "no water after the boil": ofRecipe(() => ({ topUp: litres(0) })),
  "mash thinner by 0.5 L/kg": ofRecipe(({ thickness }) => {
    const thinner = thickness === null ? null : possible(litresPerKilogram, thickness + 0.5);
    return thinner === null ? null : { thickness: thinner };
  }),
  "in two mashes": ofRecipe(({ mashes }) => (mashes === 1 ? { mashes: 2 } : null)),
  "mash 2 °C hotter": ofRecipe(({ mash }) => ({
    mash: mash.map((step) => ({ ...step, celsius: possible(celsius, step.celsius + 2) ?? step.celsius })),
  })),
  "first rest 10 minutes longer": ofRecipe(({ mash }) => ({
    mash: mash.map((step, i) => (i === 0 ? { ...step, minutes: minutes(step.minutes + 10) } : step)),
  })),
  "15 minutes more boil": ofRecipe(({ boil }) => ({ boil: minutes(boil + 15) })),
  "stand 5 °C hotter": ofRecipe(({ stand }) => {
    const hotter = stand === null ? null : possible(celsius, stand.celsius + 5);
    return stand === null || hotter === null ? null : { stand: { ...stand, celsius: hotter } };
  }),
  "alpha acids 1 percentage point lower": ofRecipe((recipe) =>
    eachHop(recipe, ["boil", "stand"], (hop) => {
      const alpha = possible(fraction, hop.alpha - 0.01);
      return alpha === null ? null : { ...hop, alpha };
    }),
  ),
  "10 % more hops in the kettle": ofRecipe((recipe) => eachHop(recipe, ["boil", "stand"], (hop) => weighed(hop, 1.1))),
  "half the dry hops": ofRecipe((recipe) => eachHop(recipe, ["dry"], (hop) => weighed(hop, 0.5))),
  "yeast that attenuates 3 percentage points further": ofRecipe(({ yeast }) => {
    const attenuationLow = possible(fraction, yeast.attenuationLow + 0.03);
    const attenuationHigh = possible(fraction, yeast.attenuationHigh + 0.03);
    return attenuationLow === null || attenuationHigh === null
      ? null
      : { yeast: { ...yeast, attenuationLow, attenuationHigh } };
  }),
  "pitched at twice the rate": ofRecipe(({ yeast }) => {
    const pitch = possible(millionPerMlPlato, yeast.pitch * 2);
    return pitch === null ? null : { yeast: { ...yeast, pitch } };
  }),
  "half a volume more carbonation": ofRecipe(({ packaging }) => {
    const carbonation = possible(volumesCo2, packaging.carbonation + 0.5);
    return carbonation === null ? null : { packaging: { ...packaging, carbonation } };
  }),
  "half a volume less carbonation": ofRecipe(({ packaging }) => {
    const carbonation = possible(volumesCo2, packaging.carbonation - 0.5);
    return carbonation === null ? null : { packaging: { ...packaging, carbonation } };
  }),
  "beer 5 °C warmer": ofRecipe(({ packaging }) => {
    const warmest = possible(celsius, packaging.warmest + 5);
    return warmest === null ? null : { packaging: { ...packaging, warmest } };
  }),
  "primed with table sugar": ofRecipe(({ packaging }) => ({ packaging: { ...packaging, priming: "sucrose" } })),
  "primed with dextrose monohydrate": ofRecipe(({ packaging }) => ({
    packaging: { ...packaging, priming: "dextroseMonohydrate" },
  })),
} as const satisfies Readonly<Record<string, Nudge>>;

function volume(wanted: number): Partial<Recipe> | null {
  const intoFermenter = possible(litres, wanted);
  return intoFermenter === null ? null : { intoFermenter };
}

function grist(recipe: Recipe, times: number): Partial<Recipe> | null {
  return eachMashed(recipe, (row) => {
    const kg = possible(kilograms, row.kg * times);
    return kg === null ? null : { ...row, kg };
  });
}

function weighed(hop: HopAddition, times: number): HopAddition | null {
  const more = possible(grams, hop.grams * times);
  return more === null ? null : { ...hop, grams: more };
}

// Changes every row of the mash; null where there is none or one cannot be changed.
function eachMashed(recipe: Recipe, change: (row: Fermentable) => Fermentable | null): Partial<Recipe> | null {
  if (!recipe.fermentables.some((row) => row.station === "mash")) return null;
  const fermentables = recipe.fermentables.map((row) => (row.station === "mash" ? change(row) : row));
  return complete(fermentables) ? { fermentables } : null;
}

function eachHop(
  recipe: Recipe,
  uses: readonly HopAddition["use"][],
  change: (hop: HopAddition) => HopAddition | null,
): Partial<Recipe> | null {
  if (!recipe.hops.some((hop) => uses.includes(hop.use))) return null;
  const hops = recipe.hops.map((hop) => (uses.includes(hop.use) ? change(hop) : hop));
  return complete(hops) ? { hops } : null;
}

const complete = <T>(rows: readonly (T | null)[]): rows is readonly T[] => rows.every((row) => row !== null);
