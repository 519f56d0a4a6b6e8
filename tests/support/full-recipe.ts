import type { Recipe } from "@/lib/calc/ledger";
import { fraction, millilitres, milliequivalentsPerKilogramPh, ph } from "@/lib/calc/units";
import { ACID_SOLUTIONS } from "@/lib/calc/water";
import { paleAle } from "./brewing-fixtures";

/** The invented pale ale with everything that a recipe can state. */
export const fullRecipe: Recipe = {
  ...paleAle,
  fermentables: paleAle.fermentables.map((row) => ({
    ...row,
    acidity: { distilledWaterPh: ph(5.7), buffering: milliequivalentsPerKilogramPh(40), lacticFraction: fraction(0) },
  })),
  water: { ...paleAle.water, acid: { solution: ACID_SOLUTIONS.lactic80, ml: millilitres(3) } },
};
