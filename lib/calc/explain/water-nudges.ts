import type { Recipe } from "../ledger";
import { grams, milligramsPerLitre } from "../units";
import { IONS, type Ions, type Salt } from "../water";
import { ofRecipe, type Nudge } from "./nudge";

/** Changes of the brewing water. */
export const WATER_NUDGES = {
  "half of the source water replaced by distilled water": ofRecipe(({ water }) => ({
    water: { ...water, source: halved(water.source) },
  })),
  "without salts": ofRecipe(({ water }) => ({ water: { ...water, salts: {} } })),
  "1 g more gypsum": ofRecipe((recipe) => oneGramMore(recipe, "gypsum")),
  "1 g more calcium chloride": ofRecipe((recipe) => oneGramMore(recipe, "calciumChlorideDihydrate")),
  "1 g more Epsom salt": ofRecipe((recipe) => oneGramMore(recipe, "epsomSalt")),
  "1 g more table salt": ofRecipe((recipe) => oneGramMore(recipe, "tableSalt")),
  "1 g more baking soda": ofRecipe((recipe) => oneGramMore(recipe, "bakingSoda")),
} as const satisfies Readonly<Record<string, Nudge>>;

function oneGramMore({ water }: Recipe, salt: Salt): Partial<Recipe> {
  return { water: { ...water, salts: { ...water.salts, [salt]: grams((water.salts[salt] ?? 0) + 1) } } };
}

function halved(source: Ions): Ions {
  const half: Record<keyof Ions, Ions["calcium"]> = { ...source };
  for (const ion of IONS) half[ion] = milligramsPerLitre(source[ion] / 2);
  return half;
}
